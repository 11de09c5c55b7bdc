import { validateBytes } from 'gltf-validator';
import { parseSync } from 'svgson';
import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import type { WovenCloth } from '../../../engine/cloth/cloth.ts';
import { cloths } from '../../../engine/cloth/cloths.ts';
import { triangleAreas } from '../../../engine/cloth/sheet.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { bodyForm } from '../../../engine/form/body-form.ts';
import { type ViewName, wornViewNames } from '../../../engine/render/form/view.ts';
import { drawnLines } from '../../../engine/wear/shown/drawn-lines.ts';
import { grainLines } from '../../../engine/wear/shown/grain-lines.ts';
import { type WornMap, wornMaps } from '../../../engine/wear/shown/maps.ts';
import { readLines } from '../../../engine/wear/shown/read-lines.ts';
import { seenWorn } from '../../../engine/wear/shown/seen-worn.ts';
import { shownWorn } from '../../../engine/wear/shown/shown-worn.ts';
import { wornGltf } from '../../../engine/wear/shown/worn-gltf.ts';
import { wornPicture } from '../../../engine/wear/shown/worn-picture.ts';
import { standOfForm } from '../../../engine/wear/stand-of-form.ts';
import { worn } from '../../../engine/wear/worn.ts';

const body = {
  units: 'cm',
  bustGirth: 92,
  underBustGirth: 75,
  waistGirth: 74,
  hipGirth: 99,
  backNeckPointToWaist: 40.5,
};
const draft = garments.find(({ name }) => name === 'bodice');
const made = draft && evaluate(draft, body, {});
if (!made?.ok) throw new Error('not drafted');
const form = bodyForm(made.value.body);
const stand = standOfForm(form);
const hung = worn(made.value.garment, cloths[0] as WovenCloth, stand, 20);
const formPlace = form.landmarks.waistSide;
const shown = shownWorn(form, hung, stand);
const found = wornMaps(hung, stand, 'mm');
const maps: readonly (readonly [string, WornMap])[] = Object.entries(found);

describe('a worn garment as glTF', () => {
  // Khronos' own validator, another hand's reading of glTF 2.0.
  it('has nothing against it, and holds body, panels and seams by their names', async () => {
    const bytes = wornGltf(form, hung, 'bodice');
    const { issues, info } = await validateBytes(bytes);
    expect(issues.messages).toEqual([]);
    expect(info.totalTriangleCount).toBe(
      form.surface.triangles.length / 3 + hung.sewn.sheet.triangles.length / 3,
    );
    const text = new TextDecoder().decode(bytes);
    for (const name of ['torso', 'left side front', 'seam: side, left'])
      expect(text).toContain(`"name":"${name}"`);
  });
});

/** CIE L* of a colour as somebody sees it; rows of the matrix mix linear red, green and blue. */
function lightness(colour: string, seen: readonly (readonly number[])[]): number {
  const linear = [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  const [r = 0, g = 0, b = 0] = seen.map((row) => row.reduce((sum, of, k) => sum + of * (linear[k] ?? 0), 0));
  const luminance = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  return 116 * Math.cbrt(Math.max(luminance, 0.0089)) - 16;
}

/** F. Viénot, H. Brettel, J. D. Mollon: Digital video colourmaps for checking the legibility of displays by dichromats, 1999; from memory. */
const eyes: readonly (readonly [string, readonly (readonly number[])[]])[] = [
  [
    'a usual eye',
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  ],
  [
    'an eye without red',
    [
      [0.11238, 0.88762, 0],
      [0.11238, 0.88762, 0],
      [0.00401, -0.00401, 1],
    ],
  ],
  [
    'an eye without green',
    [
      [0.29275, 0.70725, 0],
      [0.29275, 0.70725, 0],
      [-0.02234, 0.02234, 1],
    ],
  ],
];

describe.each(maps)('a map of %s', (_, map) => {
  it.each(eyes)('grows lighter from step to step, plainly, to %s', (_eye, seen) => {
    const steps = map.steps.map(({ colour }) => lightness(colour, seen));
    for (const [i, step] of steps.entries()) if (i > 0) expect(step - (steps[i - 1] ?? 0)).toBeGreaterThan(9);
  });

  it('has a colour of its legend for every triangle, and more than one', () => {
    expect(map.colours.length).toBe(hung.sewn.sheet.triangles.length / 3);
    const known = new Set(map.steps.map(({ colour }) => colour));
    expect(map.colours.every((colour) => known.has(colour))).toBe(true);
    expect(new Set(map.colours).size).toBeGreaterThan(2);
  });

  it.each(wornViewNames)('is drawn from the %s with its legend inside the page', (view) => {
    const svg = wornPicture(shown, view, 'bodice', map);
    const [left = 0, top = 0, width = 0, height = 0] = (parseSync(svg).attributes.viewBox ?? '')
      .split(' ')
      .map(Number);
    const rects = [...svg.matchAll(/<rect x="([-\d.]+)" y="([-\d.]+)" width="(\d+)" height="(\d+)"/g)];
    expect(rects.length).toBe(map.steps.length);
    for (const [x = 0, y = 0, w = 0, h = 0] of rects.map((found) => found.slice(1).map(Number))) {
      expect(x >= left && x + w <= left + width).toBe(true);
      expect(y >= top && y + h <= top + height).toBe(true);
    }
    for (const { says } of map.steps) expect(svg).toContain(`>${says}<`);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('the map of ease', () => {
  it('is told in the reader’s unit, and darker where cloth lies on the body', () => {
    expect(wornMaps(hung, stand, 'in').ease.steps[1]?.says).toMatch(/ in(ches)?$/);
    const { colours, steps } = found.ease;
    // The straps lie on the shoulders.
    const strap = hung.sewn.panels.find(({ panel }) => panel.name === 'back strap');
    const [first = 0, count = 0] = strap?.triangles ?? [];
    const own = colours.slice(first, first + count);
    expect(own.filter((colour) => colour === steps[0]?.colour).length).toBeGreaterThan(own.length / 2);
  });
});

describe('a map of pressure', () => {
  it('adds up to the force with which the body holds the cloth, place by place', () => {
    const { triangles } = hung.sewn.sheet;
    const { values } = found.pressure;
    const touched = Array.from(values, (value, t) => [value, t] as const).filter(([value]) => value > 0);
    expect(touched.length).toBeGreaterThan(50);
    for (const [, t] of touched)
      expect([0, 1, 2].some((k) => (hung.forces[triangles[3 * t + k] ?? 0] ?? 0) > 0)).toBe(true);
    // A point's third of every triangle about it: the mean over triangles, by area, is the force over all the cloth.
    const areas = triangleAreas(hung.sewn.sheet);
    const whole = areas.reduce((sum, area, t) => sum + (area * (values[t] ?? 0)) / 1000, 0);
    expect(whole).toBeCloseTo(
      hung.forces.reduce((sum, force) => sum + force, 0),
      6,
    );
  });
});

describe('a worn garment in black line', () => {
  const drawings = wornViewNames.map((view) => [view, wornPicture(shown, view, 'bodice', 'lines')] as const);

  it.each(drawings)('is drawn without a colour from the %s', (_view, svg) => {
    expect(new Set([...svg.matchAll(/(?:stroke|fill)="([^"]+)"/g)].map(([, colour]) => colour))).toEqual(
      new Set(['#fff', '#222', '#777', 'none']),
    );
    expect(svg.length).toBeLessThan(20_000);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  // Seams that lie behind are not seen: from the front the centre back is hidden, from behind the centre front.
  it('hides what lies behind', () => {
    const seamsIn = (view: ViewName) =>
      drawnLines(shown, seenWorn(shown, view))
        .filter(({ kind }) => kind === 'seam')
        .flatMap(({ points }) => points);
    const [, , middle] = formPlace;
    for (const [, , near] of seamsIn('front')) expect(near).toBeGreaterThan(middle - 80);
    for (const [, , near] of seamsIn('back')) expect(near).toBeGreaterThan(-middle - 80);
  });

  it('is read back as a picture of the height that is wanted, and nothing else of the file with it', () => {
    const [[, svg] = ['', '']] = drawings;
    const picture = readLines(svg.replace('</svg>', '<script>1</script><path d="M0 0L9 9"/></svg>'), 60);
    const ends = picture?.lines.flatMap(({ curves }) => curves.flatMap(({ from, to }) => [from, to])) ?? [];
    expect(ends.length).toBeGreaterThan(100);
    expect(Math.min(...ends.map(({ y }) => y))).toBeCloseTo(0, 9);
    expect(Math.max(...ends.map(({ y }) => y))).toBeCloseTo(60, 9);
    expect(picture?.words).toEqual([]);
    expect(picture?.lines.length).toBe(readLines(svg, 60)?.lines.length);
    for (const other of ['', '<svg/>', '<html><body>no</body></html>', svg.replaceAll('class=', 'id=')])
      expect(readLines(other, 60)).toBeUndefined();
  });
});

describe('grain lines', () => {
  it('lie on the cloth, straight along its warp where it hangs smooth', () => {
    const strap = grainLines(hung).find(({ piece }) => piece === 'left centre back');
    const [low, high] = [strap?.points[0], strap?.points.at(-1)];
    if (!low || !high) throw new Error('no grain');
    const { from, to } = hung.sewn.panels.find(({ panel }) => panel.name === 'centre back')?.panel.piece
      .grain ?? { from: undefined, to: undefined };
    if (!from || !to) throw new Error('no grain drawn');
    const drawn = Math.hypot(to.x - from.x, to.y - from.y);
    const chord = Math.hypot(...[0, 1, 2].map((k) => (high[k] ?? 0) - (low[k] ?? 0)));
    expect(chord).toBeLessThan(1.01 * drawn);
    expect(chord).toBeGreaterThan(0.9 * drawn);
  });
});
