import type { Ink } from '../render/ink.ts';
import { type InkClass, lineStyles } from '../render/line-types.ts';

/** A layer of a cutting file, in the trade's own word: what lies on it, and the number of its colour in the format. */
export interface Layer {
  readonly name: string;
  readonly says: string;
  readonly colour: number;
  /** The kind of line whose dashes it shows. */
  readonly dashedAs?: InkClass;
}

/** The layers, what is cut first. */
export const layers = [
  { name: 'CUT', says: 'cutting line', colour: 7 },
  { name: 'NOTCH', says: 'notches', colour: 1 },
  { name: 'DRILL', says: 'drill holes', colour: 1 },
  { name: 'STITCH', says: 'stitching line, edge by edge', colour: 5, dashedAs: 'stitch' },
  { name: 'FOLD', says: 'folds', colour: 6, dashedAs: 'fold' },
  { name: 'GRAIN', says: 'grain, with its arrows', colour: 3 },
  { name: 'LEVEL', says: 'level lines', colour: 8 },
  { name: 'CASING', says: 'casings', colour: 4, dashedAs: 'casing' },
  { name: 'GATHER', says: 'gathering rows', colour: 4, dashedAs: 'gather' },
  { name: 'SLASH', says: 'slash lines', colour: 8, dashedAs: 'slash' },
  { name: 'MARK', says: 'buttonholes and crosses', colour: 1 },
  { name: 'LABEL', says: 'words', colour: 8 },
  { name: 'TEST', says: 'test squares', colour: 8 },
] as const satisfies readonly Layer[];

export type LayerName = (typeof layers)[number]['name'];

/** Lengths of dashes and gaps of a layer's lines in turn, mm; none for solid lines. */
export const dashesOf = ({ dashedAs }: Layer): readonly number[] =>
  dashedAs === undefined ? [] : (lineStyles.get(dashedAs)?.dashes ?? []);

const layerOfClass: Partial<Readonly<Record<InkClass, LayerName>>> = {
  cut: 'CUT',
  notch: 'NOTCH',
  drill: 'DRILL',
  stitch: 'STITCH',
  fold: 'FOLD',
  grain: 'GRAIN',
  level: 'LEVEL',
  casing: 'CASING',
  gather: 'GATHER',
  slash: 'SLASH',
  buttonhole: 'MARK',
  cross: 'MARK',
  bar: 'MARK',
  square: 'TEST',
};

/** The layer of some ink of a piece; words, and the leaders from words beside a piece, are on that of labels. */
export function layerOf(ink: Ink, before: LayerName | undefined): LayerName {
  if (ink.kind === 'words') return 'LABEL';
  if (ink.kind === 'chain' && ink.class === 'stitch' && ink.names?.turn === 'fold') return 'FOLD';
  // An arrow belongs to the line drawn just before it.
  if (ink.class === 'arrow') return before ?? 'GRAIN';
  return layerOfClass[ink.class] ?? 'LABEL';
}
