import { bodice } from '../../drafts/whole-bodice.ts';
import { cloths } from '../../engine/cloth/cloths.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { fixed } from '../../engine/text/figure.ts';
import { findingsOf } from '../../engine/wear/findings.ts';
import { standFor } from '../../engine/wear/stand-for.ts';
import { worn } from '../../engine/wear/worn.ts';

/*
 * What is found on a bodice worn by whom it was drafted for, mm, a line each: cups AA to H over one under-bust girth, heights, and
 * postures as her lengths tell them: `tsx tests/bench/worn-cups.ts [mesh]`.
 */

const mesh = Number(process.argv[2] ?? 14);
const cotton = cloths.find(({ name }) => name === 'cotton');
if (!cotton) throw new Error('no such cloth');

/** Invented; every length of hers in proportion to her height. */
const lady = {
  units: 'mm',
  bustGirth: 920,
  underBustGirth: 750,
  waistGirth: 740,
  hipGirth: 990,
  neckBaseGirth: 370,
  shoulderLength: 130,
  shoulderSlope: 20,
  backNeckPointToWaist: 405,
  waistHeight: 1040,
  stature: 1670,
};

/** Bust girth less under-bust girth, middles of the steps of EN 13402, mm. */
const cups = { AA: 110, A: 130, B: 150, C: 170, D: 190, E: 210, F: 230, G: 250, H: 270 };

const tall = (by: number): object => ({
  ...lady,
  backNeckPointToWaist: lady.backNeckPointToWaist * by,
  waistHeight: lady.waistHeight * by,
  stature: lady.stature * by,
});

const bodies: Readonly<Record<string, object>> = {
  ...Object.fromEntries(
    Object.entries(cups).map(([cup, more]) => [
      `cup ${cup}`,
      { ...lady, bustGirth: lady.underBustGirth + more },
    ]),
  ),
  'height 1520': tall(152 / 167),
  'height 1600': tall(160 / 167),
  'height 1820': tall(182 / 167),
  'back 20 longer': { ...lady, backNeckPointToWaist: 425 },
  'back 20 shorter': { ...lady, backNeckPointToWaist: 385 },
  'shoulders 15 deg': { ...lady, shoulderSlope: 15 },
  'shoulders 26 deg': { ...lady, shoulderSlope: 26 },
};

const row = (values: readonly (number | undefined)[], digits = 0): string =>
  values.map((value) => fixed(value ?? Number.NaN, digits).padStart(5)).join('');
const places = ['centre front', 'front princess seam', 'side seam', 'back princess seam', 'centre back'];
console.log(
  'body | ease: bust, under-bust, waist | waist above hers: CF, princess, side, princess, CB | bust point: across, up | side: at waist, lean | strain % weft, warp | greatest gap | steps',
);
for (const [name, data] of Object.entries(bodies)) {
  const made = evaluate(bodice, data);
  if (!made.ok) {
    console.log(`${name}: not drafted`);
    continue;
  }
  const { garment, body } = made.value;
  const { stand } = standFor(garment, body);
  const hung = worn(garment, cotton, stand, mesh);
  const { ease, waistLevel, bustPoint, side, strain, gaps } = findingsOf(garment, hung, stand);
  console.log(
    [
      name.padEnd(17),
      row(ease.map((each) => each.worn)),
      row(places.map((place) => waistLevel.find(({ at }) => at === place)?.above)),
      row([bustPoint?.across, bustPoint?.up]),
      row([side?.atWaist, side?.lean]),
      row(
        strain.map(({ most }) => 100 * most),
        1,
      ),
      row([Math.max(...gaps.map(({ most }) => most))]),
      String(hung.settled.steps),
    ].join(' | '),
  );
}
