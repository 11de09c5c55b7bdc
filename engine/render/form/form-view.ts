import { measurementWords } from '../../body/measurement-words.ts';
import type { Form } from '../../form/form.ts';
import { lengthIn } from '../../text/length.ts';
import type { Unit } from '../../text/units.ts';
import { document, element, type Node, words } from '../markup.ts';
import { seenSurface, tapesSeen } from './depth.ts';
import { drawnFaces, tenths } from './faces.ts';
import { drawnTape, type SeenTape, seenTape } from './tape-lines.ts';
import { seenFrom, type ViewName } from './view.ts';

const tapeColour = '#8c1d5a';
const letters = 26;
const apart = 36;

const titles: Readonly<Record<ViewName, string>> = {
  front: 'from the front',
  side: 'from her left side',
  back: 'from the back',
  'three-quarter': 'from the front and her left',
};

/**
 * A form as it is seen, at 1:1 in mm and shown at a fifth, its tapes drawn where they are in sight and named with what they
 * read in the reader's unit.
 */
export function formView(form: Form, view: ViewName, unit: Unit): string {
  const seen = seenSurface(form.surface, view, tapesSeen);
  const tapes = form.tapes.flatMap((tape) => seenTape(tape, view, seen.isSeen) ?? []);
  const [left, right, bottom, top] = seen.points.reduce(
    ([l, r, b, t], [x, y]) => [Math.min(l, x), Math.max(r, x), Math.min(b, y), Math.max(t, y)],
    [0, 0, 0, 0] as [number, number, number, number],
  );
  // Words stand on the side their tape ends on; those that run across, on the emptier one.
  const middle = seenFrom(view, [0, 0, 0])[0];
  const columns: [SeenTape[], SeenTape[]] = [[], []];
  for (const tape of tapes.toSorted((a, b) => b.ends[0][1] - a.ends[0][1])) {
    const [a, b] = tape.ends;
    const across = a[0] < middle - 20 && b[0] > middle + 20;
    const toRight = across ? columns[0].length > columns[1].length : (a[0] + b[0]) / 2 > middle;
    columns[toRight ? 1 : 0].push(tape);
  }
  const width = 570;
  const named = columns.flatMap((column, side) =>
    labels(column, side === 1, side === 1 ? right + 40 : left - 40, -top, unit),
  );
  const box = [left - width - 40, -top - 90, right - left + 2 * (width + 40), top - bottom + 130] as const;
  const title = `${form.body} ${titles[view]}`;
  return document(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        viewBox: box.map(tenths).join(' '),
        width: `${tenths(box[2] / 5)}mm`,
        height: `${tenths(box[3] / 5)}mm`,
        role: 'img',
        'aria-label': title,
      },
      [
        element('title', {}, words(title)),
        element(
          'desc',
          {},
          words(
            `A form computed from measurements, with tapes: ${tapes.map(({ tape }) => label(tape, unit)).join('; ')}.`,
          ),
        ),
        element('rect', {
          x: tenths(box[0]),
          y: tenths(box[1]),
          width: tenths(box[2]),
          height: tenths(box[3]),
          fill: '#ffffff',
        }),
        drawnFaces(form.surface, seen),
        element(
          'g',
          {},
          tapes.map((tape) => drawnTape(tape, '#ffffff', 6)),
        ),
        element(
          'g',
          {},
          tapes.map((tape) => drawnTape(tape, tapeColour, 3)),
        ),
        element('g', { 'font-family': 'sans-serif', 'font-size': String(letters), fill: '#222222' }, named),
        element(
          'text',
          {
            x: tenths((left + right) / 2),
            y: tenths(-top - 40),
            'font-family': 'sans-serif',
            'font-size': '32',
            'text-anchor': 'middle',
            fill: '#222222',
          },
          words(title),
        ),
      ],
    ),
  );
}

const label = ({ measurement, length }: SeenTape['tape'], unit: Unit): string =>
  `${measurementWords(measurement)} ${lengthIn(length, unit)}`;

/** Words one below the other, as near to their tapes as they have room, each with a line to its tape. */
function labels(
  column: readonly SeenTape[],
  toRight: boolean,
  x: number,
  top: number,
  unit: Unit,
): readonly Node[] {
  const ends = column
    .map((tape) => ({ tape, end: tape.ends[toRight ? 1 : 0] }))
    .toSorted((a, b) => b.end[1] - a.end[1]);
  let from = top;
  return ends.flatMap(({ tape, end: [right, up] }) => {
    const y = Math.max(from, -up);
    from = y + apart;
    return [
      element('path', {
        d: `M${tenths(right)} ${tenths(-up)}L${tenths(x + (toRight ? -6 : 6))} ${tenths(y - letters / 3)}`,
        fill: 'none',
        stroke: tapeColour,
        'stroke-width': '1.2',
      }),
      element(
        'text',
        { x: tenths(x), y: tenths(y), 'text-anchor': toRight ? 'start' : 'end' },
        words(label(tape.tape, unit)),
      ),
    ];
  });
}
