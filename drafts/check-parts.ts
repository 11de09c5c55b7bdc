import { DraftMistake, perhapsMeant } from '../engine/draft-mistake.ts';
import type { Result } from '../engine/issue.ts';
import { sewingStages } from './sewing-stages.ts';

const lists = ['pieces', 'seams', 'joins', 'girths', 'notions', 'shapes'] as const;

/** Throws a `DraftMistake` where what was cut for a garment is no parts of one, as plain JavaScript may have it. */
export function checkParts(garment: string, parts: Result<object>): void {
  const wrong = (what: string, ...words: readonly string[]): DraftMistake =>
    new DraftMistake(`What cuts “${garment}” ${what}`, words);
  if (typeof parts !== 'object' || parts === null || typeof parts.ok !== 'boolean')
    throw wrong(
      `should return { ok: true, value: { pieces, seams, … }, issues: [] }.${perhapsAwaited(parts)}`,
    );
  if (!parts.ok) return;
  const lacks = lists.filter((list) => !Array.isArray(Reflect.get(parts.value ?? {}, list)));
  if (lacks.length > 0) throw wrong(`returns no list of ${lacks.join(', ')}: write [] where there are none.`);
  for (const piece of Reflect.get(parts.value, 'pieces') as readonly unknown[]) checkPiece(piece, wrong);
  const seams = Reflect.get(parts.value, 'seams') as readonly unknown[];
  for (const seam of seams) checkSeam(seam, wrong);
  const names = seams.map((seam) => String(Reflect.get(Object(seam), 'name')));
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined)
    throw wrong(`has more than one seam “${twice}”: the sewing order could not tell which is meant.`, twice);
  const stages: readonly string[] = sewingStages;
  const unknown = Object.keys(Reflect.get(parts.value, 'sewing') ?? {}).find(
    (stage) => !stages.includes(stage),
  );
  if (unknown !== undefined)
    throw wrong(
      `sews at the stage “${unknown}”, which there is not.${perhapsMeant(unknown, stages)}`,
      unknown,
    );
}

/** A sentence for what is to be waited for, which no draft may be. */
export const perhapsAwaited = (value: unknown): string =>
  value instanceof Promise ? ' It is there at once, so it has no “async”.' : '';

/** Both sides of a seam are lists of edges, be it of one. */
function checkSeam(seam: unknown, wrong: (what: string, ...words: readonly string[]) => DraftMistake): void {
  const sides = ['a', 'b'].map((side): unknown => Reflect.get(Object(seam), side));
  const name = String(Reflect.get(Object(seam), 'name'));
  if (!sides.every(Array.isArray))
    throw wrong(
      `sews the seam “${name}” of what is no list of edges: write [{ piece, edge }], also of one.`,
      name,
    );
}

const listsOfPiece = ['edges', 'notches', 'lines', 'marks', 'cut'] as const;

/** The same of a piece, before anything is looked for on it. */
function checkPiece(
  piece: unknown,
  wrong: (what: string, ...words: readonly string[]) => DraftMistake,
): void {
  if (typeof piece !== 'object' || piece === null) throw wrong('cuts a piece that is nothing.');
  const name = String(Reflect.get(piece, 'name'));
  const lacks = listsOfPiece.filter((list) => !Array.isArray(Reflect.get(piece, list)));
  if (lacks.length > 0)
    throw wrong(
      `gives the piece “${name}” no list of ${lacks.join(', ')}: write [] where there are none.`,
      name,
    );
}
