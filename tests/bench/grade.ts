import { draftSizes } from '../../engine/grading/draft-sizes.ts';
import { gradeOf } from '../../engine/grading/grade.ts';
import { nestFiles } from '../../engine/grading/nest/nest-papers.ts';
import { chartOf, draftOf, shippedChart } from '../engine/grading/charts.ts';
import { ownTime } from './own-time.ts';
import { figures, table } from './timing.ts';

/** The dress in ten sizes of five cups, warm, on one core: drafted, graded and drawn as nests; the median of some rounds, ms. */
export function benchGrade(rounds = 5): string {
  const dress = draftOf('dress');
  const times = Array.from({ length: rounds + 1 }, () => {
    const start = ownTime();
    const chart = chartOf(shippedChart('workshop-stock.yaml'), dress);
    const read = ownTime();
    const made = [...draftSizes(dress, chart, {})].flatMap((size) => (size.ok ? [size.value] : []));
    const drafted = ownTime();
    const grade = gradeOf(dress, chart, made);
    const graded = ownTime();
    if (grade.ok) nestFiles(grade.value);
    const drawn = ownTime();
    return [read - start, drafted - read, graded - drafted, drawn - graded, drawn - start];
  }).slice(1);
  const stages = [
    'read the chart',
    'draft and check 50 sizes',
    'rule tables, evenness',
    'nests',
    'all of it',
  ];
  const median = (i: number): number =>
    times.map((one) => one[i] ?? 0).toSorted((a, b) => a - b)[Math.floor(rounds / 2)] ?? 0;
  return [
    'The dress in ten sizes of five cups, ms',
    table([['', 'median'], ...stages.map((stage, i) => [stage, figures(median(i))])]),
  ].join('\n');
}
