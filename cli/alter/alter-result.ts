import { edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { signedArea } from '../../engine/geometry/outline.ts';
import { distance } from '../../engine/geometry/point.ts';
import type { Issue } from '../../engine/issue.ts';
import { pressedOver, sewnDarts } from '../../engine/pattern/dart.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { GUIDE, widthAt } from '../../engine/shaping/own-piece.ts';
import type { TracedPiece } from '../../engine/shaping/traced.ts';
import type { PartnerWalk } from '../../engine/shaping/walk-partner.ts';
import { fixed, significant } from '../../engine/text/figure.ts';
import { lengthCell, SIXTEENTHS } from '../../engine/text/length.ts';
import { millimetres, type Unit } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { countIssues } from '../output/say-issues.ts';
import { type Column, table } from '../output/table.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { AlteredResult } from '../results/alter.ts';

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
export function alterTables(outcome: AlterOutcome, reader: Reader): string {
  const { traced, before, after, done, deviation, seam, issues } = outcome;
  const { units } = reader;
  const figure = figureIn(units);
  const length = (mm: number): string => `${figure(mm)} ${units}`;
  const edges = table(
    edgeColumns,
    edgeRows(before, after).map(([name, was, is]) => {
      const start = [...after.edges, ...before.edges].find((edge) => edge.name === name);
      const at = start ? edgeStart(start) : undefined;
      return [
        name,
        was === undefined ? '' : figure(was),
        is === undefined ? '' : figure(is),
        was === undefined || is === undefined ? '' : signed(is - was, figure),
        at ? `${figure(at.x, 0)}, ${figure(at.y, 0)}` : '',
      ];
    }),
    reader.columns,
  );
  const notches = after.notches.map(({ name, edge, at }) => `notch ${name}: ${length(at)} along ${edge}\n`);
  const darts = dartRows(after).map(
    ({ legs, mouth, pressedOver: over }) =>
      `dart ${legs.join(' to ')}: ${length(mouth)} wide, stitched and pressed over ${over}\n`,
  );
  const [was, is] = [guideWidth(before), guideWidth(after)];
  const more = signedArea(after.edges) - signedArea(before.edges);
  return [
    `${withLengthsIn(doneWords(done), units)}\n\n${lengthsLine(reader)}${edges}\n`,
    ...notches,
    ...darts,
    `${GUIDE}: ${length(was)} across, now ${length(is)}\n`,
    `inside the stitching line: ${clothWords(more, units)}\n`,
    deviation > 0 ? `cut edges blended within ${length(deviation)} of where the strips lie\n` : '',
    `scale: one unit is ${significant(traced.mmPerUnit / millimetres[units], 6)} ${units} (${scaleWords[traced.scaleFrom]})\n`,
    seam ? `\n${seamWords(seam, units)}` : '',
    `issues: ${countIssues(issues)}\n`,
  ].join('');
}

/** The unit that areas are told in, mm, and its square in words. */
const areaIn: Readonly<Record<Unit, readonly [number, string]>> = {
  mm: [millimetres.cm, 'cm²'],
  cm: [millimetres.cm, 'cm²'],
  in: [millimetres.in, 'square inches'],
};

const doneWords = (done: readonly string[]): string => {
  const [first = 'nothing altered', ...others] = done;
  return others.length === 0 ? first : done.map((said, i) => `${i + 1}. ${said}`).join('\n');
};

/** A change of area, mm², as cloth. */
function clothWords(change: number, units: Unit): string {
  const [side, squares] = areaIn[units];
  const size = fixed(Math.abs(change) / side ** 2, 1);
  if (Number(size) === 0) return 'as much cloth as before';
  return `${size} ${squares} ${change > 0 ? 'more' : 'less'} cloth`;
}

const scaleWords = {
  given: 'as you said',
  square: 'from the 50-mm test square',
  drawing: 'from the size the drawing gives itself',
} as const;

/** What a seam with a partner takes, in a dressmaker's words, and where. */
function seamWords(
  { edge, partner, before, after, partnerLength, ...seam }: PartnerWalk,
  units: Unit,
): string {
  const length = (mm: number): string => `${figureIn(units)(mm)} ${units}`;
  const lengths = `${edge}: ${length(before)}, now ${length(after)}; its partner ${partner}: ${length(partnerLength)}\n`;
  const verdict = {
    plain: 'sewn plain: both are equally long\n',
    gather: `gather ${length(after)} to ${length(partnerLength)}: ${length(seam.gathers)} of gathers, ratio ${fixed(seam.ratio, 3)} to 1\n`,
    'partner longer': `the partner is ${length(-seam.gathers)} longer: gather that one, or spread more\n`,
  }[seam.verdict];
  if (seam.stretches.length < 2) return lengths + verdict;
  const stretches = seam.stretches.map(
    ({ from, to, lengthA, lengthB }) => `  ${from} to ${to}: ${length(lengthA)} to ${length(lengthB)}\n`,
  );
  return lengths + verdict + stretches.join('');
}

/** A length of a piece (mm) as it is shown. */
const figureIn =
  (units: Unit) =>
  (mm: number, decimals = 1): string =>
    lengthCell(mm, units, decimals, SIXTEENTHS);

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

const signed = (value: number, figure: (value: number) => string): string =>
  value > 0.05 ? `+${figure(value)}` : figure(value);

const edgeColumns: readonly Column[] = [
  { title: 'edge, clockwise' },
  { title: 'traced', right: true },
  { title: 'now', right: true },
  { title: 'change', right: true },
  { title: 'starts at x, y' },
];
