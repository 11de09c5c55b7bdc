import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { draftSource } from '../../../cli/own-draft/draft-source.ts';

/** An error thrown in the engine, called by a draft, called by the program. */
const thrown = (...frames: readonly string[]): Error =>
  Object.assign(new Error('torn'), {
    stack: `Error: torn\n${frames.map((frame) => `    at f (${resolve(frame)}:7:1)`).join('\n')}`,
  });

describe('the place of what is thrown', () => {
  it('is a line of the draft, though the program lies in its folder too', () => {
    const { mistake } = draftSource('./my-apron.ts', resolve('my-apron.ts'));
    const error = thrown('engine/constraints/sketch-builder.ts', 'drafts/draw-garment.ts', 'my-apron.ts');
    expect(mistake(error).source).toEqual({ file: './my-apron.ts', line: 7 });
  });

  it('may lie beside the draft, and among the drafts of the program', () => {
    const { mistake } = draftSource('drafts/mine/apron.ts', resolve('drafts/mine/apron.ts'));
    const error = thrown('engine/constraints/solve.ts', 'drafts/mine/pocket.ts');
    expect(mistake(error).source).toEqual({ file: 'drafts/mine/pocket.ts', line: 7 });
  });
});
