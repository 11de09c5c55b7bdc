import { numeral } from '../render/path-data.ts';
import { escaped } from './escaped.ts';
import type { Version } from './flavour.ts';

/** One value with the group code that says what it is. */
export type DxfGroup = readonly [code: number, value: string | number];

/** A real number: with a point, as strict readers ask. */
export function real(value: number): string {
  const text = numeral(value);
  return text.includes('.') ? text : `${text}.0`;
}

/** A point by three groups from `code` on; the drawing is flat. */
export const at = (
  code: number,
  { x, y }: { readonly x: number; readonly y: number },
): readonly DxfGroup[] => [
  [code, real(x)],
  [code + 10, real(y)],
  [code + 20, real(0)],
];

/** Text from outside, escaped. */
export const said = (code: number, text: string): DxfGroup => [code, escaped(text)];

/**
 * Numbers what is written, as versions from R13 on ask: every object has a handle, names its owner, and marks the classes
 * whose groups follow. Of R12 nothing of it is written.
 */
export class Numbering {
  readonly version: Version;
  private last = 0;

  constructor(version: Version) {
    this.version = version;
  }

  /** A handle that no other object has. */
  handle(): string {
    this.last += 1;
    return this.last.toString(16).toUpperCase();
  }

  /** Groups that only versions from R13 on have. */
  modern(...groups: readonly DxfGroup[]): readonly DxfGroup[] {
    return this.version === 'AC1009' ? [] : groups;
  }

  /** The beginning of an object of this kind. */
  begun(kind: string, owner: string, handle: string = this.handle()): readonly DxfGroup[] {
    return [[0, kind], ...this.modern([5, handle], [330, owner])];
  }

  /** The beginning of something drawn. */
  drawn(kind: string, owner: string, layer: string, className: string): readonly DxfGroup[] {
    return [
      ...this.begun(kind, owner),
      ...this.modern([100, 'AcDbEntity']),
      [8, layer],
      ...this.modern([100, className]),
    ];
  }
}

/** Groups as they stand in a file: a line for each code, a line for each value. */
export const written = (groups: Iterable<DxfGroup>): string => {
  let text = '';
  for (const [code, value] of groups) text += `${code}\n${value}\n`;
  return text;
};
