import { limitsMet } from '../constraints/limits-met.ts';
import { solve } from '../constraints/solve.ts';
import type { Evaluation } from '../evaluate.ts';
import type { Issue, Result } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import { type Sensitivity, sensitivities } from '../sensitivity/sensitivity.ts';
import { fixed, fixedMm } from '../text/figure.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { alignments, cornersOf } from './anchor.ts';
import { atSize } from './at-size.ts';
import type { Shaping } from './cause.ts';
import { causeName, causeWords } from './cause-words.ts';
import { axesOf, type Chart } from './chart.ts';
import { chartIssue, shown } from './chart-issues.ts';
import { changeOf, type Evenness, evenness, type Uneven } from './evenness.ts';
import { type Jump, jumpBetween } from './jump.ts';
import { type GradedSize, laidSize } from './laid-size.ts';
import { type AxisGrade, axisGrade } from './rule-table.ts';
import { unlikeSizes } from './unlike-sizes.ts';

/** A garment in all sizes of a chart, what its pieces do from size to size, and what was found of that. */
export interface Grade {
  readonly garment: string;
  readonly chart: Chart;
  /** In the order of the chart. */
  readonly sizes: readonly GradedSize[];
  readonly axes: readonly (AxisGrade & Evenness)[];
  /** Faults of single sizes, unlike sizes, and uneven steps. */
  readonly issues: readonly Issue[];
  /** Every size is true, and all are alike. */
  readonly ok: boolean;
}

/**
 * What comes out when every size is drafted: nests are laid and steps read by `align`, one of `alignments` or a corner's
 * name. `made` holds the drafted rows of the chart, in its order. Issue: `unknown-alignment`.
 */
export function gradeOf(
  draft: Draft,
  chart: Chart,
  made: readonly Evaluation[],
  align: string = alignments[0],
): Result<Grade> {
  const unknown = unknownAlignment(align, made);
  if (unknown) return { ok: false, issues: [unknown] };
  const sizes = chart.rows.flatMap((row, i) => {
    const one = made[i];
    return one ? [laidSize(row, one, align)] : [];
  });
  const shaping = {
    shapedBy: draft.shapedBy,
    limitsMet: limitsOfSizes(draft),
    slopes: slopesOfSizes(draft),
    jump: jumpsOfSizes(draft),
  };
  const axes = axesOf(chart).map((axis) => {
    const onIt = axis.rows.flatMap((row) => sizes.find(({ of }) => of === row) ?? []);
    const grade = axisGrade(axis, onIt);
    return { ...grade, ...evenness(grade, onIt, shaping) };
  });
  const run = sizes.filter(({ of }) => !of.alone);
  const issues = [
    ...sizes.flatMap(({ of, made: { report } }) =>
      report.issues.filter(({ severity }) => severity === 'error').map((issue) => atSize(of.name, issue)),
    ),
    ...unlikeSizes(run),
    ...unevenIssues(axes.flatMap(({ uneven }) => uneven)),
  ];
  const ok = !issues.some(({ severity }) => severity === 'error');
  return { ok: true, value: { garment: draft.name, chart, sizes, axes, issues, ok }, issues };
}

/** The limits on which the lines of a size rest, by drawing it once more when they are asked for. */
function limitsOfSizes({ draw }: Draft): (size: GradedSize) => readonly string[] {
  const known = new Map<GradedSize, readonly string[]>();
  return (size) => {
    const before = known.get(size);
    if (before) return before;
    const met: string[] = [];
    draw(size.made.body, size.made.styling, (sketch) => {
      const solution = solve(sketch);
      met.push(...limitsMet(sketch, solution));
      return solution;
    });
    known.set(size, met);
    return met;
  };
}

/** How a size answers to its measurements, worked out when it is asked for. */
function slopesOfSizes(draft: Draft): (size: GradedSize) => readonly Sensitivity[] {
  const known = new Map<GradedSize, readonly Sensitivity[]>();
  return (size) => {
    const before = known.get(size);
    if (before) return before;
    const found = sensitivities(draft, size.made.body, size.made.styling);
    const slopes = found.ok ? found.value : [];
    known.set(size, slopes);
    return slopes;
  };
}

/** How far a piece jumps between two sizes, worked out when it is asked for. */
function jumpsOfSizes(draft: Draft): Shaping['jump'] {
  const known = new Map<string, Jump | undefined>();
  return (from, to, piece, least) => {
    const key = [from.of.name, to.of.name, piece, least].join('\n');
    if (!known.has(key)) known.set(key, jumpBetween(draft, from, to, piece, least));
    return known.get(key);
  };
}

function unknownAlignment(align: string, made: readonly Evaluation[]): Issue | undefined {
  const corners = made[0]?.garment.pieces.flatMap((piece) => cornersOf(piece).map(({ name }) => name)) ?? [];
  const known: readonly string[] = [...alignments, ...corners];
  if (known.includes(align)) return undefined;
  const near = nearestWord(align, known);
  const hint = near
    ? `Do you mean “${near}”?`
    : `Lay them by ${alignments.join(', ')}, or by a corner such as “${corners[0] ?? 'waist to side'}”.`;
  return chartIssue('unknown-alignment', '--align', `No piece has a place called “${shown(align)}”. ${hint}`);
}

/**
 * One issue for each size, or cup, at which steps are uneven from one kind of cause, naming the worst of them and how many
 * more there are, other cups or sizes counted.
 */
function unevenIssues(uneven: readonly Uneven[]): readonly Issue[] {
  const together = new Map<string, Uneven[]>();
  for (const one of uneven) {
    const key = `${one.along}\n${one.name}\n${causeName(one.cause)}`;
    together.set(key, [...(together.get(key) ?? []), one]);
  }
  return [...together.values()].flatMap((group) => {
    const worst = group.toSorted((a, b) => changeOf(b) - changeOf(a))[0];
    return worst ? [unevenIssue(worst, group)] : [];
  });
}

function unevenIssue(worst: Uneven, group: readonly Uneven[]): Issue {
  const { along, at, name, piece, what, quantity, before, after, allowed, cause } = worst;
  const size = (along === 'sizes' ? [name, at] : [at, name]).filter((word) => word !== '').join(' ');
  const of = quantity === 'length' ? `the length of “${what}”` : `${quantity} of “${what}”`;
  const held = new Set(group.map((one) => one.at)).size;
  const across = held > 1 ? ` in ${held} ${along === 'sizes' ? 'cups' : 'sizes'}` : '';
  const others = group.length > 1 ? `, and ${group.length - 1} more with it${across}` : '';
  return {
    code: 'uneven-grade',
    severity: 'warning',
    path: `size ${size}: ${piece}/${what}`,
    value: changeOf(worst),
    limits: { max: allowed, unit: 'mm' },
    message: `The step of ${of} of ${piece} changes from ${fixed(before, 1)} to ${fixedMm(after, 1)} at ${along === 'sizes' ? 'size' : 'cup'} ${name}${others}: ${causeWords(cause)}.`,
  };
}
