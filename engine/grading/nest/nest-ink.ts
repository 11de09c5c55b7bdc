import type { Curve } from '../../geometry/curve.ts';
import type { Ink } from '../../render/ink.ts';
import type { Axis } from '../chart.ts';
import type { NamePlace } from './size-names.ts';

/** Everything on the paper of a nest: what belongs to one size, by its place among them, and what belongs to all. */
export type NestInk = SizeInk | Ink;

export type SizeInk = SizeChain | SizeName | KeyName;

/** A line of one size: an outline, a sample of it in the key, the tick of a notch, or what leads to its name. */
export interface SizeChain {
  readonly kind: 'outline' | 'sample' | 'tick' | 'leader';
  readonly place: number;
  readonly size: string;
  readonly notch?: string;
  readonly curves: readonly Curve[];
  readonly closed?: true;
}

/** The name of a size on its line, or where a leader ends. */
export interface SizeName extends Omit<NamePlace, 'leader'> {
  readonly kind: 'size name';
  readonly place: number;
  readonly size: string;
}

/** The name of a size beside the sample of its line, in the key. */
export interface KeyName {
  readonly kind: 'key name';
  readonly place: number;
  readonly size: string;
  readonly words: Ink;
}

/** What belongs to one size, and not to all of them. */
export const isOfSize = (ink: NestInk): ink is SizeInk => 'place' in ink;

/** Nests on one paper, 1:1. */
export interface NestPaper {
  readonly title: string;
  readonly along: Axis['along'];
  /** mm */
  readonly width: number;
  readonly height: number;
  /** The names of the sizes, in their places. */
  readonly sizes: readonly string[];
  /** What is drawn, that of each piece together. */
  readonly groups: readonly NestGroup[];
}

export interface NestGroup {
  readonly piece?: string;
  /** Only there to be measured. */
  readonly isScale?: true;
  readonly ink: readonly NestInk[];
}
