import { changeWords, type FittedLevel, type FittingChange } from '../../engine/body/fitting.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';

/** Logs what was pinned at the seams at these levels. */
export function sayPinned(
  changes: readonly FittingChange[],
  levels: readonly FittedLevel[],
  log: ConstructionLog,
): void {
  for (const change of changes)
    if ('seam' in change && levels.includes(change.level))
      log.say(`Fitting, ${changeWords(change)}`, `${figure(change.mm)} mm on each layer`, 'fitting');
}

/** Logs a girth (mm) that the fitting changed by intent, and tells the dressmaker. */
export function sayTaken(
  level: FittedLevel,
  drafted: number,
  body: number,
  less: number,
  log: ConstructionLog,
): void {
  if (less === 0) return;
  const finished = log.mm(
    `Fitting, finished girth at the ${level}`,
    `${figure(drafted)} ${less > 0 ? '-' : '+'} ${figure(Math.abs(less))} ${less > 0 ? 'taken from' : 'given to'} the seams, both layers, left and right`,
    drafted - less,
    'fitting',
  );
  const change = `The fitting makes the ${level} ${figure(Math.abs(less))} mm ${less > 0 ? 'smaller' : 'larger'}: ${figure(finished)} mm finished, where the body has ${figure(body)} mm.`;
  const tight = finished < body;
  log.remark({
    code: tight ? 'fitting-tighter-than-body' : 'fitting-changes-girth',
    severity: tight ? 'warning' : 'note',
    path: level,
    value: finished,
    message: tight ? `${change} That is smaller than the body: measure it again.` : change,
  });
}
