import { measurementWords } from '../body/measurement-words.ts';
import { boundsName } from '../constraints/compile/residuals.ts';
import { figure, fixedMm } from '../text/figure.ts';
import { listed } from '../text/listed.ts';
import type { Cause } from './cause.ts';

/** What causes of one kind have in common, whatever they come to. */
export function causeName(cause: Cause): string {
  switch (cause.kind) {
    case 'chart':
    case 'estimate':
      return `${cause.kind} ${cause.measurement}`;
    case 'styling':
      return `${cause.kind} ${cause.choice}`;
    case 'construction':
      return `${cause.kind} ${cause.step}`;
    case 'limit':
      return `${cause.kind} ${cause.limits.join()}`;
    case 'turn':
      return `${cause.kind} ${cause.step}`;
    case 'branch':
    case 'found':
      return cause.kind;
  }
}

/** The cause in a dressmaker's words. */
export function causeWords(cause: Cause): string {
  switch (cause.kind) {
    case 'chart':
      return `the chart’s own step in ${measurementWords(cause.measurement)} changes by ${mm(cause.change)}`;
    case 'styling':
      return `“${cause.choice}” is chosen otherwise there`;
    case 'estimate':
      return `the chart does not give the ${measurementWords(cause.measurement)}, and the step of its estimate changes by ${mm(cause.change)}${cause.others.length > 0 ? `, as that of the ${listed(cause.others.map(measurementWords))} does` : ''}`;
    case 'construction':
      return `the step of “${cause.step}” in the construction changes by ${mm(cause.change)}`;
    case 'limit':
      return `${cause.limits.map((limit) => `“${withoutBounds(limit)}”`).join(' and ')} ${cause.limits.length === 1 ? 'comes' : 'come'} to ${cause.limits.length === 1 ? 'its limit' : 'their limits'} there`;
    case 'turn':
      return `“${cause.step}” in the construction grows there by ${figure((Math.abs(cause.by) * 180) / Math.PI)} degrees each time, so that what lies far from it moves on an arc`;
    case 'branch':
      return `lines that are found together turn from one answer to another between sizes ${cause.between.join(' and ')}, by ${mm(cause.mm)} in a hundredth of the way`;
    case 'found':
      return 'no single number; the lines that are found together turn there';
  }
}

/** A bound is called after what it bounds. */
const withoutBounds = (limit: string): string =>
  limit.startsWith(boundsName('')) ? limit.slice(boundsName('').length) : limit;

const mm = (value: number): string => fixedMm(Math.abs(value), 1);
