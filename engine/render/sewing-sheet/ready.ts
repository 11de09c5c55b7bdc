import type { SewingStep } from '../../pattern/sewing.ts';
import { listed } from '../../text/listed.ts';

/** What the step at `place` needs done before it, in words, each with the number of the step that did it. */
export function readyWords(steps: readonly SewingStep[], place: number): readonly string[] {
  const pieces = new Map<string, string[]>();
  for (const { piece, is, at } of steps[place]?.needs ?? []) {
    if (at === undefined) continue;
    const by = steps.findIndex(({ brings = [] }) =>
      brings.some((state) => state.piece === piece && state.is === is && state.at === at),
    );
    const done = `${is} (step ${by + 1})`;
    pieces.set(done, [...(pieces.get(done) ?? []), piece]);
  }
  return [...pieces].map(([done, names]) => `${listed(names)} ${done}`);
}
