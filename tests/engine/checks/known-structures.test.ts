import { describe, expect, it } from 'vitest';
import { unaccounted } from '../../../engine/checks/accounted.ts';
import { checkGarment } from '../../../engine/checks/check-garment.ts';
import { markFaults } from '../../../engine/checks/marks.ts';
import { misnamed } from '../../../engine/checks/misnamed.ts';
import { sewingFaults } from '../../../engine/checks/sewing.ts';
import { isSameStructure, structureOf } from '../../../engine/checks/structure.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment: dress, report } = drafted('dress', shippedBody('leading-lady'));
const { pieces, seams, joins, girths, notions, sewing } = dress;

/** What is found in a garment without anything being known of others. */
const looked = (garment: Garment): readonly string[] => {
  const tape = tapeFor(garment);
  const checks = [misnamed, unaccounted, markFaults, sewingFaults];
  return checks.flatMap((check) => check(garment, tape).map(({ code, path }) => `${code} ${path}`));
};

/** What says where lines lie, and what is only read aloud. */
const left: ReadonlySet<string> = new Set(['curves', 'grain', 'how', 'amounts', 'cautions']);

/** A join of another kind has other parts. */
const kindsOfJoin: ReadonlySet<unknown> = new Set(['across', 'mirror', 'along']);

/** All ways to change one word, number or yes of some data, or to leave one thing of a list out. */
function* changes(data: unknown): Generator<unknown> {
  if (typeof data === 'string') yield `${data} otherwise`;
  if (typeof data === 'number') yield data + 1;
  if (typeof data === 'boolean') yield !data;
  if (typeof data !== 'object' || data === null) return;
  if (Array.isArray(data)) {
    for (const [i, one] of data.entries()) {
      yield data.toSpliced(i, 1);
      for (const other of changes(one)) yield data.with(i, other);
    }
    return;
  }
  for (const [name, value] of Object.entries(data)) {
    if (left.has(name) || kindsOfJoin.has(value)) continue;
    // A condition is one of a closed list.
    const others = name === 'is' ? [value === 'folded' ? 'cut' : 'folded'] : changes(value);
    for (const other of others) yield { ...data, [name]: other };
  }
}

/** Garments that one change makes of the dress, each third of all there are. */
function* garments(): Generator<Garment> {
  const parts = { pieces, seams, joins, girths, notions, sewing };
  let count = 0;
  for (const changed of changes(parts)) if (count++ % 3 === 0) yield { ...dress, ...(changed as object) };
}

describe('a garment that is put together like one in which nothing was found', () => {
  it('has the same structure for another body', () => {
    const { garment } = drafted('dress', shippedBody('stage-manager'));
    expect(isSameStructure(structureOf(dress), structureOf(garment))).toBe(true);
  });

  it('is told from every one in which one name or count is otherwise and something is found', () => {
    expect(report.ok).toBe(true);
    const known = structureOf(dress);
    let wrong = 0;
    for (const garment of garments()) {
      const isOfMeasure = (fault: string): boolean => /girth-(mis|of)|notch-off|fold-without/.test(fault);
      const found = looked(garment).filter((fault) => !isOfMeasure(fault));
      if (found.length === 0) continue;
      wrong++;
      expect(isSameStructure(known, structureOf(garment)), found.join(', ')).toBe(false);
    }
    expect(wrong).toBeGreaterThan(500);
  });

  it('is not believed where its seams are otherwise: all that is wrong is found', () => {
    const broken = { ...dress, seams: seams.filter(({ name }) => name !== 'side') };
    const found = checkGarment(broken).issues.map(({ code, path }) => `${code} ${path}`);
    for (const fault of looked(broken)) expect(found).toContain(fault);
  });
});
