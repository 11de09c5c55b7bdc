import { garments } from '../../drafts/garments.ts';
import { cloths } from '../../engine/cloth/cloths.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { fixed } from '../../engine/text/figure.ts';
import { findingsOf } from '../../engine/wear/findings.ts';
import { standFor } from '../../engine/wear/stand-for.ts';
import { worn } from '../../engine/wear/worn.ts';
import { shippedBodies, shippedBody } from '../drafts/drafted.ts';

/*
 * What is found on a garment worn by each body that ships, mm, one line a body:
 * `tsx tests/bench/worn-table.ts [garment] [mesh] [styling as JSON]`.
 */

const [, , name = 'bodice', mesh = '20', styling = '{}'] = process.argv;
const draft = garments.find((each) => each.name === name);
const cotton = cloths.find((cloth) => cloth.name === 'cotton');
if (!draft || !cotton) throw new Error('no such garment');
const places = ['centre front', 'front princess seam', 'side seam', 'back princess seam', 'centre back'];
const gapEdges = [
  'neckline between the bust points',
  'neckline outside the bust points',
  'back neckline',
  'front armhole',
  'back armhole',
];
const row = (values: readonly (number | undefined)[], digits = 0): string =>
  values.map((value) => fixed(value ?? Number.NaN, digits).padStart(5)).join('');
console.log(
  'body | ease: bust, under-bust, waist | waist above hers: CF, princess, side, princess, CB | bust point: across, up | side: at waist, lean | strain % weft, warp | gaps: neck between and outside the bust points, back neck, armhole front, back; how much longer each is than the body | steps, net mN, s of processor',
);
for (const body of shippedBodies) {
  const made = evaluate(draft, shippedBody(body), JSON.parse(styling));
  if (!made.ok) {
    console.log(`${body}: not drafted`);
    continue;
  }
  const { garment } = made.value;
  const from = process.cpuUsage();
  const { stand } = standFor(garment, made.value.body);
  const hung = worn(garment, cotton, stand, Number(mesh));
  const found = findingsOf(garment, hung, stand);
  const { user, system } = process.cpuUsage(from);
  console.log(
    [
      body.padEnd(17),
      row(found.ease.map((ease) => ease.worn)),
      row(places.map((place) => found.waistLevel.find(({ at }) => at === place)?.above)),
      row([found.bustPoint?.across, found.bustPoint?.up]),
      row([found.side?.atWaist, found.side?.lean]),
      row(
        found.strain.map(({ most }) => 100 * most),
        1,
      ),
      row(gapEdges.map((edge) => found.gaps.find((gap) => gap.edge === edge)?.most)),
      row(gapEdges.map((edge) => found.gaps.find((gap) => gap.edge === edge)?.longer)),
      `${hung.settled.steps} ${fixed(1000 * hung.settled.net, 1)} ${fixed((user + system) / 1e6, 1)}`,
    ].join(' | '),
  );
}
