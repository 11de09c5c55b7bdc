/** What is shown of a worn garment in space: plain data. x to the wearer's left, y up, z forward; mm. */
export interface WornScene {
  readonly title: string;
  /** What it shows and what was found, for who cannot see it. */
  readonly says: string;
  /** x, y, z of every point of the cloth. */
  readonly points: Float32Array;
  readonly pieces: readonly ScenePiece[];
  readonly body: readonly SceneSolid[];
  readonly lines: readonly SceneLine[];
  /** Heights of the body's levels. */
  readonly levels: Readonly<Record<string, number>>;
  readonly maps: readonly SceneMap[];
  /** How heights are told: what a mm is in the reader's unit, its name, and digits behind the point. */
  readonly reader: { readonly perMm: number; readonly unit: string; readonly digits: number };
}

/** A piece on its side of the body: its triangles, three points each, wound so that they look away from the body. */
export interface ScenePiece {
  readonly name: string;
  readonly colour: string;
  readonly triangles: Uint32Array;
  /** Which value of a map is that of its first triangle. */
  readonly first: number;
}

export interface SceneSolid {
  readonly name: string;
  readonly points: Float32Array;
  readonly triangles: Uint32Array;
}

export interface SceneLine {
  readonly name: string;
  readonly kind: 'seam' | 'grain';
  /** The place of each of its points, one after the other. */
  readonly points: Float32Array;
}

/** A figure of each triangle, in the unit it is told in, and the colours that it is shown by. */
export interface SceneMap {
  readonly name: string;
  readonly title: string;
  readonly unit: string;
  readonly digits: number;
  readonly values: Float32Array;
  /** For each triangle the number of its step. */
  readonly stepOf: Uint32Array;
  readonly steps: readonly { readonly colour: string; readonly says: string }[];
}

/** What is known of the cloth at one place. */
export interface SceneReading {
  readonly piece: string;
  /** Above the waist and to the wearer's left of the middle, mm. */
  readonly above: number;
  readonly aside: number;
  readonly figures: readonly {
    readonly title: string;
    readonly value: number;
    readonly unit: string;
    readonly digits: number;
  }[];
}
