import { garments } from '../../drafts/garments.ts';
import { cloths } from '../../engine/cloth/cloths.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { bodyForm } from '../../engine/form/body-form.ts';
import { findingsOf } from '../../engine/wear/findings.ts';
import { standOfForm } from '../../engine/wear/stand-of-form.ts';
import { worn } from '../../engine/wear/worn.ts';
import { shippedBodies, shippedBody } from '../drafts/drafted.ts';

const only = process.argv[3];
const spacing = Number(process.argv[2] ?? 20);
const styling = JSON.parse(process.argv[4] ?? '{}');
const cotton = cloths.find(({ name }) => name === 'cotton');
if (!cotton) throw new Error();
const draft = garments.find(({ name }) => name === 'bodice');
const f = (v: number | undefined, d = 0): string => (v ?? Number.NaN).toFixed(d).padStart(5);
console.log(
  'body            ease bust ub waist | waist cf fp ss bp cb | bp across up | side lean | strain | gaps neck back arm | rest',
);
for (const name of shippedBodies) {
  if (only && only !== 'all' && name !== only) continue;
  const made = draft && evaluate(draft, shippedBody(name), styling);
  if (!made?.ok) {
    console.log(name, 'not drafted');
    continue;
  }
  const from = process.cpuUsage();
  const form = bodyForm(made.value.body, { armRise: Number(process.argv[5] ?? 30) });
  const stand = standOfForm(form);
  const hung = worn(made.value.garment, cotton, stand, spacing);
  const found = findingsOf(made.value.garment, hung, stand);
  const { user, system } = process.cpuUsage(from);
  const level = (at: string) => found.waistLevel.find((l) => l.at === at)?.above;
  console.log(
    name.padEnd(18),
    found.ease.map((e) => f(e.worn)).join(''),
    '|',
    ['centre front', 'front princess seam', 'side seam', 'back princess seam', 'centre back']
      .map((a) => f(level(a)))
      .join(''),
    '|',
    f(found.bustPoint?.across),
    f(found.bustPoint?.up),
    '|',
    f(found.side?.atWaist),
    f(found.side?.lean, 1),
    '|',
    found.strain.map((s) => f(100 * s.most, 1)).join(''),
    '|',
    found.gaps.map((g) => f(g.most)).join(''),
    '|',
    hung.settled.steps,
    (1000 * hung.settled.residual).toFixed(1),
    'mN',
    ((user + system) / 1e6).toFixed(1),
    's',
  );
}
