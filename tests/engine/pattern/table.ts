import { readBody } from '../../../engine/body/read.ts';
import { type DraftingTable, draftingTable } from '../../../engine/pattern/drafting-table.ts';
import { ruleTable } from '../../../engine/pattern/rule.ts';
import type { Choice } from '../../../engine/pattern/styling.ts';
import { commonPractice } from '../../../engine/sources.ts';
import { shippedBody } from '../../drafts/drafted.ts';

export const choices = [
  { kind: 'number', name: 'ease', unit: 'mm', default: 60, min: 0, max: 100, help: 'room' },
  { kind: 'number', name: 'share', unit: 'share', default: 0.64, min: 0, max: 1, help: 'a share' },
  { kind: 'number', name: 'lean', unit: 'degrees', default: 4, min: 0, max: 9, help: 'an angle' },
  { kind: 'number or auto', name: 'drop', unit: 'mm', default: 'auto', min: 0, max: 9, help: 'how low' },
  { kind: 'word', name: 'neckline', default: 'round', words: ['round', 'pointed'], help: 'its shape' },
] as const satisfies readonly Choice[];

export const rules = ruleTable('Z', {
  drop: [15, 'mm', 'so far below', commonPractice],
  above: [8, 'mm', 'so far above', commonPractice],
  third: [0.33, 'share', 'about a third', 'from memory'],
  tilt: [2, 'degrees', 'tilted by this', 'an atlas, 1911'],
  perMm: [0.006, 'per mm', 'so much for each mm', 'from memory'],
});

/** A table for the leading lady, and what was found at her fitting. */
export function laid(fitting?: readonly object[]): DraftingTable<typeof choices> {
  const body = readBody({ ...shippedBody('leading-lady'), ...(fitting ? { fitting } : {}) });
  if (!body.ok) throw new Error('the leading lady cannot be read');
  return draftingTable(body.value, choices, {
    ease: 60,
    share: 0.64,
    lean: 4,
    drop: 'auto',
    neckline: 'round',
  });
}
