import { edgeLength, edgeStart } from '../engine/geometry/edge.ts';
import { signedArea } from '../engine/geometry/outline.ts';
import { distance } from '../engine/geometry/point.ts';
import type { Issue } from '../engine/issue.ts';
import { pressedOver, sewnDarts } from '../engine/pattern/dart.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import { GUIDE, widthAt } from '../engine/shaping/own-piece.ts';
import type { TracedPiece } from '../engine/shaping/traced.ts';
import type { PartnerWalk } from '../engine/shaping/walk-partner.ts';
import type { AlteredResult } from './results/alter.ts';
import { countIssues } from './say-issues.ts';
import { type Column, fixed, table } from './table.ts';
import { issuesResult } from './walk-result.ts';

/** A piece before and after, and everything that is told about it. */
export interface AlterOutcome {
  readonly traced: TracedPiece;
  readonly before: Piece;
  readonly after: Piece;
  /** What was done, in words, in its order. */
  readonly done: readonly string[];
  readonly deviation: number;
  readonly seam: PartnerWalk | undefined;
  readonly issues: readonly Issue[];
}

/** The same as data; lengths in mm. */
export function alterResult({
  traced,
  before,
  after,
  done,
  deviation,
  seam,
  issues,
}: AlterOutcome): AlteredResult {
  return {
    ok: issues.every(({ severity }) => severity !== 'error'),
    piece: after.name,
    done,
    scale: { mmPerUnit: traced.mmPerUnit, from: traced.scaleFrom },
    edges: edgeRows(before, after).map(([name, was, is]) => ({
      name,
      before: was ?? null,
      after: is ?? null,
    })),
    notches: after.notches.map(({ name, edge, at, mark }) => ({ name, edge, at, mark })),
    darts: dartRows(after),
    guide: { before: guideWidth(before), after: guideWidth(after) },
    area: { before: signedArea(before.edges), after: signedArea(after.edges) },
    blended: deviation,
    seam: seam ?? null,
    issues: issuesResult(issues),
  };
}

/** What was done, edge by edge, and what the seam takes now. */
export function alterTables(outcome: AlterOutcome): string {
  const { traced, before, after, done, deviation, seam, issues } = outcome;
  const edges = table(
    edgeColumns,
    edgeRows(before, after).map(([name, was, is]) => {
      const start = [...after.edges, ...before.edges].find((edge) => edge.name === name);
      const at = start ? edgeStart(start) : undefined;
      return [
        name,
        was === undefined ? '' : fixed(was, 1),
        is === undefined ? '' : fixed(is, 1),
        was === undefined || is === undefined ? '' : signed(is - was),
        at ? `${fixed(at.x, 0)}, ${fixed(at.y, 0)}` : '',
      ];
    }),
  );
  const notches = after.notches.map(
    ({ name, edge, at }) => `notch ${name}: ${fixed(at, 1)} mm along ${edge}\n`,
  );
  const darts = dartRows(after).map(
    ({ legs, mouth, pressedOver: over }) =>
      `dart ${legs.join(' to ')}: ${fixed(mouth, 1)} mm wide, stitched and pressed over ${over}\n`,
  );
  const [was, is] = [guideWidth(before), guideWidth(after)];
  return [
    `${doneWords(done)}\n\n${edges}\n`,
    ...notches,
    ...darts,
    `${GUIDE}: ${fixed(was, 1)} mm across, now ${fixed(is, 1)} mm\n`,
    `inside the stitching line: ${clothWords(signedArea(after.edges) - signedArea(before.edges))}\n`,
    deviation > 0 ? `cut edges blended within ${fixed(deviation, 1)} mm of where the strips lie\n` : '',
    `scale: one unit is ${traced.mmPerUnit.toPrecision(6)} mm (${scaleWords[traced.scaleFrom]})\n`,
    seam ? `\n${seamWords(seam)}` : '',
    `issues: ${countIssues(issues)}\n`,
  ].join('');
}

const doneWords = (done: readonly string[]): string => {
  const [first = 'nothing altered', ...others] = done;
  return others.length === 0 ? first : done.map((said, i) => `${i + 1}. ${said}`).join('\n');
};

/** A change of area, mm², as cloth. */
function clothWords(change: number): string {
  const size = fixed(Math.abs(change) / 100, 1);
  if (Number(size) === 0) return 'as much cloth as before';
  return `${size} cm² ${change > 0 ? 'more' : 'less'} cloth`;
}

const scaleWords = {
  given: 'as you said',
  square: 'from the 50 mm test square',
  drawing: 'from the size the drawing gives itself',
} as const;

/** What a seam with a partner takes, in a dressmaker's words, and where. */
function seamWords({ edge, partner, before, after, partnerLength, ...seam }: PartnerWalk): string {
  const lengths = `${edge}: ${fixed(before, 1)} mm, now ${fixed(after, 1)} mm; its partner ${partner}: ${fixed(partnerLength, 1)} mm\n`;
  const verdict = {
    plain: 'sewn plain: both are equally long\n',
    gather: `gather ${fixed(after, 1)} mm to ${fixed(partnerLength, 1)} mm: ${fixed(seam.gathers, 1)} mm of gathers, ratio ${fixed(seam.ratio, 3)} to 1\n`,
    'partner longer': `the partner is ${fixed(-seam.gathers, 1)} mm longer: gather that one, or spread more\n`,
  }[seam.verdict];
  if (seam.stretches.length < 2) return lengths + verdict;
  const stretches = seam.stretches.map(
    ({ from, to, lengthA, lengthB }) =>
      `  ${from} to ${to}: ${fixed(lengthA, 1)} mm to ${fixed(lengthB, 1)} mm\n`,
  );
  return lengths + verdict + stretches.join('');
}

/** The darts that are drawn, and to which side their cloth goes. */
const dartRows = (piece: Piece) =>
  sewnDarts(piece.edges).map((dart) => ({
    legs: dart.legs.map(({ name }) => name),
    mouth: distance(dart.first.through, dart.second.through),
    pressedOver: dart[pressedOver(dart, piece)].name,
  }));

const guideWidth = (piece: Piece): number => {
  const y = piece.lines.find(({ name }) => name === GUIDE)?.curves[0]?.from.y;
  return y === undefined ? 0 : widthAt(piece, y);
};

function edgeRows(
  before: Piece,
  after: Piece,
): readonly (readonly [string, number | undefined, number | undefined])[] {
  const names = new Set([...after.edges, ...before.edges].map(({ name }) => name));
  const length = (piece: Piece, name: string): number | undefined => {
    const edge = piece.edges.find((candidate) => candidate.name === name);
    return edge && edgeLength(edge);
  };
  return [...names].map((name) => [name, length(before, name), length(after, name)]);
}

const signed = (value: number): string => (value > 0.05 ? `+${fixed(value, 1)}` : fixed(value, 1));

const edgeColumns: readonly Column[] = [
  { title: 'edge, clockwise' },
  { title: 'traced (mm)', right: true },
  { title: 'now (mm)', right: true },
  { title: 'change', right: true },
  { title: 'starts at x, y' },
];
