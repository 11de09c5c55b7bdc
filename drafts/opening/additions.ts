import { flatMapped } from '../../engine/flat-mapped.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { type StagedSewing, sewingStages } from '../sewing-stages.ts';

/** What is added to the step that sews a seam, by the name of the seam. */
export type Additions = Readonly<Record<string, Pick<SewingStep, 'how' | 'brings' | 'uses'>>>;

/** The steps of the parts of a garment, with what its opening adds to some of them. */
export function added(rest: StagedSewing, additions: Additions): StagedSewing {
  const changed = (step: SewingStep): SewingStep => {
    const found = flatMapped(step.sews ?? [], (seam) => additions[seam] ?? []);
    if (found.length === 0) return step;
    const brings = [...(step.brings ?? []), ...flatMapped(found, (addition) => addition.brings ?? [])];
    const uses = [...(step.uses ?? []), ...flatMapped(found, (addition) => addition.uses ?? [])];
    return {
      ...step,
      how: [...step.how, ...flatMapped(found, ({ how }) => how)],
      ...(brings.length > 0 && { brings }),
      ...(uses.length > 0 && { uses }),
    };
  };
  return Object.fromEntries(sewingStages.map((stage) => [stage, (rest[stage] ?? []).map(changed)]));
}
