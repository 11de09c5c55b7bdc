import type { Wish } from '../../engine/constraints/relations.ts';
import type { Sketch } from '../../engine/constraints/sketch.ts';
import {
  endOf,
  lengthOf,
  SketchBuilder,
  startOf,
  xOf,
  yOf,
} from '../../engine/constraints/sketch-builder.ts';

/**
 * A sketch of the size and kind of a garment's, in three parts: a front and back bodice whose four panels hang
 * together through their seams, a sleeve cap, and a neckline. `off` moves every first guess, and `grow` every size,
 * by shares.
 */
export function garmentSketch(off = 0, grow = 0): Sketch {
  const draw = new SketchBuilder();
  bodice(draw, 1 + grow, off);
  sleeve(draw, 1 + grow, off);
  neckline(draw, 1 + grow, off);
  return draw.sketch();
}

/** A share of the chord, up or down by turns, so that the guesses are off each in its own way. */
function guesser(off: number): (x: number, y: number) => { readonly x: number; readonly y: number } {
  let turn = 0;
  return (x, y) => {
    turn++;
    return { x: x + 60 * off * Math.cos(turn), y: y + 60 * off * Math.sin(turn) };
  };
}

function bodice(draw: SketchBuilder, size: number, off: number): void {
  const guess = guesser(off);
  const at = (x: number, y: number) => ({ x: x * size, y: y * size });
  const near = (x: number, y: number) => guess(x * size, y * size);
  const halves = [
    { half: 'front', x: 0, bust: 96, waist: 76, dart: 20 },
    { half: 'back', x: 400, bust: 92, waist: 80, dart: 6 },
  ];
  const wishes: Wish[] = [];
  for (const { half, x, bust, waist, dart } of halves) {
    const target = new Map<string, { readonly x: number; readonly y: number }>();
    const free = (name: string, px: number, py: number): void => {
      target.set(name, at(x + px, py));
      draw.point(name, near(x + px, py));
    };
    draw.fixed(`${half} top`, at(x + 80, 60));
    draw.fixed(`${half} side top`, at(x + 180, 60));
    free(`${half} apex`, bust, 190);
    free(`${half} waist`, waist, 380);
    free(`${half} side apex`, 180, 190);
    free(`${half} side waist`, 190 + dart, 380);
    free(`${half} underarm`, 300, 150);
    free(`${half} notch`, 250, 120);
    free(`${half} side seam foot`, 280, 375);
    const centre = draw.smoothLine(`${half} princess`, [`${half} top`, `${half} apex`, `${half} waist`], {
      start: { angle: 1.4 + off },
      end: { angle: 1.7 - off },
    });
    const side = draw.smoothLine(
      `${half} side princess`,
      [`${half} side top`, `${half} side apex`, `${half} side waist`],
      { start: { angle: 1.7 - off }, end: { angle: 1.45 + off } },
    );
    const armhole = draw.smoothLine(
      `${half} armhole`,
      [`${half} side top`, `${half} notch`, `${half} underarm`],
      {
        start: { angle: 0.9 - off },
        end: { angle: 0.1 + off },
      },
    );
    const seam = draw.curve(`${half} side seam`, `${half} underarm`, `${half} side seam foot`, {
      start: { angle: 1.6 },
      end: { angle: 1.65 },
    });
    draw.line(`${half} waistline`, `${half} side waist`, `${half} side seam foot`);
    draw.relation(
      ...[0, 1].map((i) => ({
        kind: 'length' as const,
        name: `${half} princess ${i + 1}`,
        terms: [lengthOf([centre[i] ?? '']), lengthOf([side[i] ?? ''], -1)],
        mm: 0,
      })),
      { kind: 'length', name: `${half} armhole`, terms: [lengthOf(armhole)], mm: 158 * size },
      { kind: 'sum', name: `${half} apex level`, terms: [yOf(`${half} apex`)], value: 190 * size },
      {
        kind: 'sum',
        name: `${half} waist`,
        terms: [xOf(`${half} waist`), xOf(`${half} side seam foot`), xOf(`${half} side waist`, -1)],
        value: (x + 150) * size,
      },
      {
        kind: 'turn',
        name: `${half} underarm square`,
        from: endOf(`${half} armhole 2`),
        to: startOf(seam),
        angle: Math.PI / 2,
      },
      {
        kind: 'curvature',
        name: `${half} armhole runs on`,
        a: endOf(`${half} armhole 1`),
        b: startOf(`${half} armhole 2`),
      },
      { kind: 'no inflection', name: `${half} armhole scoops`, curve: `${half} armhole 2`, turns: -1 },
      {
        kind: 'turn',
        name: `${half} waist square`,
        from: endOf(seam),
        to: startOf(`${half} waistline`),
        angle: -Math.PI / 2,
      },
    );
    for (const [point, place] of target)
      wishes.push(
        { kind: 'near', name: `${point} x`, terms: [xOf(point)], value: place.x, weight: 1e-4 },
        { kind: 'near', name: `${point} y`, terms: [yOf(point)], value: place.y, weight: 1e-4 },
      );
    for (const curve of [...centre, ...side, ...armhole, seam])
      wishes.push(
        { kind: 'low bending', name: `${curve} bends little`, curve, weight: 0.1 },
        { kind: 'fair', name: `${curve} is fair`, curve, weight: 0.01 },
      );
  }
  draw.wish(...wishes);
  draw.relation(
    {
      kind: 'length',
      name: 'side seams',
      terms: [lengthOf(['front side seam']), lengthOf(['back side seam'], -1)],
      mm: 0,
    },
    {
      kind: 'sum',
      name: 'underarm level',
      terms: [yOf('front underarm'), yOf('back underarm', -1)],
      value: 0,
    },
  );
}

function sleeve(draw: SketchBuilder, size: number, off: number): void {
  const guess = guesser(off);
  const near = (x: number, y: number) => guess(x * size, y * size);
  draw.point('cap back', { x: -160 * size, y: 700 * size }, 'x');
  draw.point('cap back notch', near(-90, 640));
  draw.point('cap top', { x: 0, y: 570 * size }, 'y');
  draw.point('cap front notch', near(90, 645));
  draw.point('cap front', { x: 155 * size, y: 700 * size }, 'x');
  const cap = draw.smoothLine(
    'cap',
    ['cap back', 'cap back notch', 'cap top', 'cap front notch', 'cap front'],
    {
      start: { angle: 0 - off },
      end: { angle: 0 + off },
    },
  );
  draw.relation(
    { kind: 'length', name: 'cap length', terms: [lengthOf(cap)], mm: 430 * size },
    { kind: 'length', name: 'cap back underarm', terms: [lengthOf(cap.slice(0, 1))], mm: 95 * size },
    { kind: 'length', name: 'cap front underarm', terms: [lengthOf(cap.slice(3))], mm: 95 * size },
    { kind: 'sum', name: 'biceps', terms: [xOf('cap front'), xOf('cap back', -1)], value: 320 * size },
  );
  for (const curve of cap)
    draw.wish(
      { kind: 'low bending', name: `${curve} bends little`, curve, weight: 0.1 },
      { kind: 'fair', name: `${curve} is fair`, curve, weight: 0.01 },
    );
}

function neckline(draw: SketchBuilder, size: number, off: number): void {
  draw.fixed('neck side', { x: 70 * size, y: 900 * size });
  draw.point('neck centre', { x: 0, y: 990 * size }, 'y');
  draw.fixedAngle('square to the fold', Math.PI);
  const neck = draw.curve('neck', 'neck side', 'neck centre', {
    start: { angle: 1.6 + off },
    end: { angle: 'square to the fold' },
  });
  draw.relation(
    { kind: 'length', name: 'neck length', terms: [lengthOf([neck])], mm: 128 * size },
    { kind: 'least radius', name: 'neck not too tight', curve: neck, mm: 30 * size },
  );
  draw.wish({ kind: 'fair', name: 'neck is fair', curve: neck, weight: 1 });
}
