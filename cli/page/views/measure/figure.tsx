import {
  capital,
  howHeld,
  howTaken,
  type LineFigure,
  type MeasurementName,
  measurementWords,
} from '../../../../drafts/index.ts';
import type { BodyFigure } from '../../requests/study.ts';
import type { ToldSize } from './told-size.ts';

const sides = ['front', 'side', 'back'] as const;

type FigureSide = (typeof sides)[number];

const from: Readonly<Record<FigureSide, string>> = {
  front: 'from the front',
  side: 'from her left side',
  back: 'from the back',
};

/** What is measured down to the floor or up to the crown: then all of her is shown. */
const tall: ReadonlySet<MeasurementName> = new Set(['waistHeight', 'stature']);

/** Shown down to so much of the figure else. */
const cropped = 0.56;

interface FigureProps {
  readonly figure: BodyFigure;
  readonly at: MeasurementName | undefined;
  /** What is told of that measurement: how much it is, and what is wrong with it. */
  readonly told?: ToldSize | undefined;
  /** Only the side from which the tape is seen best. */
  readonly best?: boolean;
}

/** Her form from three sides, with the tape where it lies for the measurement that is being taken. */
export function Figure({ figure, at, told, best }: FigureProps) {
  const shown = best && at ? [bestSide(figure, at)] : sides;
  // All sides to one scale.
  const wide = Math.max(...sides.map((side) => figure[side].width));
  const lies = at !== undefined && sides.some((side) => tapeOn(figure[side], at));
  return (
    <div class="figure-sides">
      {shown.map((side) => (
        <figure key={side}>
          <Drawn figure={figure[side]} side={side} at={at} told={told} hers={figure.hers} wide={wide} />
          <figcaption>{capital(side)}</figcaption>
        </figure>
      ))}
      {at && !lies && (
        <p class="quiet">No tape is drawn for the {measurementWords(at)}: the words say how it is held.</p>
      )}
    </div>
  );
}

function Drawn({
  figure,
  side,
  at,
  told,
  hers,
  wide,
}: Pick<FigureProps, 'at' | 'told'> & {
  readonly figure: LineFigure;
  readonly side: FigureSide;
  readonly hers: boolean;
  readonly wide: number;
}) {
  const { left, top, width, height, contours, tapes } = figure;
  const tape = at ? tapeOn(figure, at) : undefined;
  const down = at && tall.has(at) ? height : cropped * height;
  const whose = hers ? 'Her form' : 'A usual form';
  const says = `${whose} ${from[side]}${at ? tapeWords(at, tape !== undefined, told) : '.'}`;
  return (
    <svg
      role="img"
      aria-label={says}
      viewBox={[left - 15 - (wide - width) / 2, top - 15, wide + 30, down + 30].map(Math.round).join(' ')}
      class={hers ? 'form hers' : 'form'}
    >
      <path class="contour" d={contours} />
      {!at && tapes.map(({ measurement, d }) => <path key={measurement} class="tape faint" d={d} />)}
      {tape && <path class="tape" d={tape.d} />}
    </svg>
  );
}

/** Where the tape lies, how long it is, and what is wrong with that. */
function tapeWords(at: MeasurementName, seen: boolean, told: ToldSize | undefined): string {
  const name = measurementWords(at);
  if (!seen) return `; the tape for the ${name} is not seen from there.`;
  const amount = told?.amount ? `, ${told.amount}` : '';
  return `: the tape for the ${name}${amount}.${told?.wrong.map((each) => ` ${each}`).join('') ?? ''}`;
}

/** A tape of which hardly anything is in sight is not drawn. */
const least = 25;

const tapeOn = ({ tapes }: LineFigure, name: MeasurementName) =>
  tapes.find(({ measurement, seen }) => measurement === name && seen > least);

const bestSide = (figure: BodyFigure, at: MeasurementName): FigureSide =>
  sides.reduce((best, side) => {
    const seen = (each: FigureSide): number => tapeOn(figure[each], at)?.seen ?? 0;
    return seen(side) > seen(best) ? side : best;
  });

/** How the tape is held for one measurement. */
export const Held = ({ at }: { readonly at: MeasurementName }) => (
  <p>
    <strong>{capital(measurementWords(at))}.</strong> {howTaken[at]} {howHeld[at]}
  </p>
);
