import { flatMapped } from '../../flat-mapped.ts';
import type { Issue } from '../../issue.ts';
import type { SewingCode } from '../../issue-codes/issue-codes.ts';
import type { Garment } from '../../pattern/garment.ts';
import type { SewingStep, State } from '../../pattern/sewing.ts';
import type { Tape } from '../tape.ts';

/** Everything in the steps that names a seam, edge, piece, place or notion which the garment does not have. */
export function unknownNames(garment: Garment, steps: readonly SewingStep[], tape: Tape): Issue[] {
  const seams = new Set(garment.seams.map(({ name }) => name));
  const notions = new Set(garment.notions.map(({ name }) => name));
  const titles = new Set<string>();
  return flatMapped(steps, (step) => {
    const unknown = (what: string): Issue =>
      fault('sewing-no-such-part', step, `speaks of ${what}, which is not there`);
    const again = titles.has(step.title);
    titles.add(step.title);
    const states = [...(step.needs ?? []), ...(step.brings ?? []), ...(step.closes ?? [])];
    return [
      ...(again ? [fault('sewing-step-twice', step, 'is there twice')] : []),
      ...flatMapped([...(step.sews ?? []), ...(step.presses ?? [])], (name) =>
        seams.has(name) ? [] : [unknown(`the seam “${name}”`)],
      ),
      ...flatMapped(step.uses ?? [], (name) => (notions.has(name) ? [] : [unknown(`the notion “${name}”`)])),
      ...flatMapped([...(step.turns ?? []), ...(step.catches ?? [])], ({ piece, edge }) =>
        tape.edge(piece, edge) ? [] : [unknown(`the edge “${edge}” of the piece “${piece}”`)],
      ),
      ...flatMapped(states, (state) =>
        isThere(state, tape) ? [] : [unknown(`“${state.at ?? ''}” of the piece “${state.piece}”`)],
      ),
    ];
  });
}

/** Whole pieces are cut and marked; all else is done at an edge or at a line inside. */
function isThere({ piece: name, is, at }: State, tape: Tape): boolean {
  const piece = tape.piece(name);
  if (!piece) return false;
  if (is === 'cut' || is === 'marked') return at === undefined;
  return at !== undefined && (!!tape.edge(name, at) || piece.lines.some((line) => line.name === at));
}

const fault = (code: SewingCode, { title }: SewingStep, what: string): Issue => ({
  code,
  severity: 'error',
  path: title,
  message: `The sewing step “${title}” ${what}.`,
});
