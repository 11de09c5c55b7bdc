import type { GirthReport, JoinReport, Report, SeamReport, ShapeReport } from '../checks/report.ts';
import type { Evaluation } from '../evaluate.ts';
import type { Edge } from '../geometry/curve.ts';
import type { Notion } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import type { Styling } from '../pattern/styling.ts';
import { writtenNotions } from '../pattern/written-notions.ts';
import { type MadeFrom, takenFrom } from './taken.ts';

/** A draft as far as it is known: drawn just now, or read from what an earlier run wrote. Lengths in mm. */
export interface KnownDraft {
  readonly garment: string;
  readonly body: string;
  readonly figures: Figures;
  /** What stands on its sheet; nothing where only its figures are known. */
  readonly sheet?: KnownSheet;
  readonly styling?: Styling;
  readonly taken?: MadeFrom;
}

/** What a report says in numbers. */
export interface Figures {
  readonly seams: readonly KnownSeam[];
  readonly joins: readonly KnownJoin[];
  readonly girths: readonly KnownGirth[];
  /** Those that are known: where `shapesPartly` is set, as those that are measured on paper, nothing is known of others. */
  readonly shapes: readonly KnownShape[];
  readonly shapesPartly?: true;
}

export type KnownSeam = Pick<SeamReport, 'name' | 'a' | 'b' | 'lengthA' | 'lengthB' | 'ease' | 'gatherRatio'>;
export type KnownJoin = Pick<JoinReport, 'name' | 'angle'>;
export type KnownGirth = Pick<GirthReport, 'level' | 'body' | 'ease' | 'finished'>;
export type KnownShape = Pick<ShapeReport, 'name' | 'piece' | 'value' | 'unit'>;

/** Pieces as they are drawn, their cutting lines by piece name, and what is cut or bought beside them. */
export interface KnownSheet {
  readonly pieces: readonly Piece[];
  readonly cutLines: ReadonlyMap<string, Edge>;
  readonly notions: readonly Notion[];
}

/** Everything that is known of a draft made just now. */
export const draftedNow = ({ garment, cutLines, report, styling, body }: Evaluation): KnownDraft => ({
  garment: report.garment,
  body: report.body,
  figures: figuresOf(report),
  sheet: { pieces: garment.pieces, cutLines, notions: writtenNotions(garment.notions) },
  styling,
  taken: takenFrom(body),
});

/** The figures of a report. */
export const figuresOf = ({ seams, joins, girths, shapes }: Report): Figures => ({
  seams: seams.map(({ name, a, b, lengthA, lengthB, ease, gatherRatio }) => ({
    name,
    a,
    b,
    lengthA,
    lengthB,
    ease,
    gatherRatio,
  })),
  joins: joins.map(({ name, angle }) => ({ name, angle })),
  girths: girths.map(({ level, body, ease, finished }) => ({ level, body, ease, finished })),
  shapes: shapes.map(({ name, piece, value, unit }) => ({ name, piece, value, unit })),
});
