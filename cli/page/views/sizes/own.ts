import type { NestLine } from '../../../../drafts/index.ts';
import type { AskedDraft } from '../../asked-draft.ts';
import { hearing } from '../../hearing.ts';
import type { OwnState } from '../../own-state.ts';
import type { PageIssue } from '../../page-issue.ts';
import type {
  ChartFile,
  GradeShown,
  NamedText,
  NearShown,
  NestAsked,
  NestShown,
} from '../../requests/sizes-messages.ts';

/** A chart, what was graded by it, and what is looked at of that. */
export interface GradedSizes {
  readonly chart: ChartFile | undefined;
  /** Counts the grades that were asked for. */
  readonly number: number;
  /** What the newest was asked for, and how far it is; nothing once it is there. */
  readonly of: Graded | undefined;
  readonly busy: { readonly done: number; readonly of: number } | undefined;
  readonly grade: GradeShown | undefined;
  readonly issues: readonly PageIssue[];
  /** The body files that the chart names and that are not there. */
  readonly needs: readonly string[];
  /** What is looked at. */
  readonly looked: NestAsked;
  /** The nest that was asked for last, while it is drawn. */
  readonly drawing: NestAsked | undefined;
  readonly nest: NestShown | undefined;
  readonly near: NearShown | 'sought' | undefined;
  readonly nearIssues: readonly PageIssue[];
  readonly writing: boolean;
}

/** What a grade depends on: of a draft only garment and choices. */
export type Graded = Pick<AskedDraft, 'garment' | 'choices'>;

export type SizesAction =
  | { readonly does: 'chart'; readonly chart: ChartFile }
  /** Files in which the chart says that bodies are. */
  | { readonly does: 'bodies'; readonly bodies: readonly NamedText[] }
  | { readonly does: 'units'; readonly units: string }
  | { readonly does: 'begin'; readonly number: number; readonly of: Graded }
  | { readonly does: 'look'; readonly at: Partial<NestAsked> }
  | { readonly does: 'draw'; readonly nest: NestAsked }
  | { readonly does: 'seek' }
  | { readonly does: 'write' };

const nowhere: NestAsked = {
  piece: '',
  size: '',
  cup: '',
  along: 'sizes',
  line: 'stitching' as NestLine,
  beside: true,
};

const empty: GradedSizes = {
  chart: undefined,
  number: 0,
  of: undefined,
  busy: undefined,
  grade: undefined,
  issues: [],
  needs: [],
  looked: nowhere,
  drawing: undefined,
  nest: undefined,
  near: undefined,
  nearIssues: [],
  writing: false,
};

export const sized: OwnState<GradedSizes, SizesAction> = {
  empty,
  reduce: (own, action) => {
    switch (action.does) {
      case 'chart':
        return { ...empty, number: own.number, chart: action.chart };
      case 'bodies': {
        if (!own.chart) return own;
        const others = own.chart.bodies.filter(
          ({ file }) => !action.bodies.some((body) => body.file === file),
        );
        return {
          ...empty,
          number: own.number,
          chart: { ...own.chart, bodies: [...others, ...action.bodies] },
        };
      }
      case 'units':
        return own.chart
          ? { ...empty, number: own.number, chart: { ...own.chart, units: action.units } }
          : own;
      case 'begin':
        return {
          ...own,
          number: action.number,
          of: action.of,
          busy: { done: 0, of: 0 },
          issues: [],
          drawing: undefined,
          near: undefined,
          nearIssues: [],
        };
      case 'look':
        return { ...own, looked: { ...own.looked, ...action.at } };
      case 'draw':
        return { ...own, drawing: action.nest };
      case 'seek':
        return { ...own, near: 'sought', nearIssues: [] };
      case 'write':
        return { ...own, writing: true };
    }
  },
  hear: hearing({
    asks: 'sizes',
    refused: (own) => ({ ...own, busy: undefined, writing: false }),
    hears: {
      grading: (own, { done, of }) => ({ ...own, busy: { done, of } }),
      graded: (own, { grade, issues, needs }) => ({
        ...{ ...own, busy: undefined, grade, issues, needs, nest: undefined },
        looked: lookedAt(own.looked, grade),
      }),
      'nest drawn': (own, { nest }) => ({ ...own, drawing: undefined, nest }),
      'nearest found': (own, { near, issues }) => ({ ...own, near, nearIssues: issues }),
      'sizes written': (own) => ({ ...own, writing: false }),
    },
  }),
};

/** What was looked at, as far as the grade has it; else its middle. */
function lookedAt(looked: NestAsked, grade: GradeShown | undefined): NestAsked {
  if (!grade) return looked;
  const { pieces, sizes, cups, middle } = grade;
  const among = (names: readonly string[], name: string, otherwise: string): string =>
    names.includes(name) ? name : otherwise;
  return {
    ...looked,
    piece: among(pieces, looked.piece, pieces[0] ?? ''),
    size: among(sizes, looked.size, middle.size),
    cup: among(cups, looked.cup, middle.cup),
    along: sizes.length > 1 || cups.length === 1 ? looked.along : 'cups',
  };
}

/** Whether two nests are the same. */
export const isSameNest = (a: NestAsked | undefined, b: NestAsked | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  (['piece', 'size', 'cup', 'along', 'line', 'beside'] as const).every((name) => a[name] === b[name]);

/** Whether two grades are of the same garment with the same choices. */
export const isSameGrade = (a: Graded | undefined, b: Graded): boolean =>
  a?.garment === b.garment && JSON.stringify(a.choices) === JSON.stringify(b.choices);
