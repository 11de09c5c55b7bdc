import { flatMapped } from '../engine/flat-mapped.ts';
import type { SewingStep, State } from '../engine/pattern/sewing.ts';

/**
 * The stages of sewing a garment, in order. Every part of a garment gives its steps by stage, and so they fall into
 * place whatever parts the garment has.
 */
export const sewingStages = [
  'trial',
  'cut',
  'mark',
  'stay-stitch',
  'prepare',
  'under-bust',
  'princess',
  'strap',
  'side',
  'sleeve',
  'armhole',
  'waist',
  'centre back',
  'inside',
  'neckline',
  'hem',
  'finish',
] as const;

export type SewingStage = (typeof sewingStages)[number];

/** The steps of a part of a garment by stage; those of one stage in order. */
export type StagedSewing = Readonly<Partial<Record<SewingStage, readonly SewingStep[]>>>;

/** The steps of several parts in one order: stage by stage, and within a stage part by part. */
export const inStages = (parts: readonly StagedSewing[]): readonly SewingStep[] =>
  flatMapped(sewingStages, (stage) => flatMapped(parts, (part) => part[stage] ?? []));

/** The same, still by stage. */
export function stagesTogether(parts: readonly StagedSewing[]): StagedSewing {
  const together: Partial<Record<SewingStage, SewingStep[]>> = {};
  for (const part of parts) {
    // A part has steps of few stages.
    for (const stage of Object.keys(part) as SewingStage[]) {
      const steps = part[stage];
      if (!steps || steps.length === 0) continue;
      together[stage] ??= [];
      together[stage].push(...steps);
    }
  }
  return together;
}

/** A piece brought to something at one of its edges or lines. */
export const state = (piece: string, is: State['is'], at: string): State => ({ piece, is, at });
