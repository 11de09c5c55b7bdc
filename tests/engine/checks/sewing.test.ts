import { describe, expect, test } from 'vitest';
import { sewingFaults } from '../../../engine/checks/sewing.ts';
import { tapeFor } from '../../../engine/checks/tape.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { SewingStep, State } from '../../../engine/pattern/sewing.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment } = drafted('dress', shippedBody('leading-lady'));
const tape = tapeFor(garment);
const order = garment.sewing ?? [];

const faults = (sewing: readonly SewingStep[], changed: Partial<Garment> = {}) =>
  sewingFaults({ ...garment, ...changed, sewing }, tape);

/** What is found, as `code: path`. */
const found = (sewing: readonly SewingStep[], changed?: Partial<Garment>): readonly string[] =>
  faults(sewing, changed).map(({ code, path }) => `${code}: ${path}`);

const titled = (title: string): SewingStep => {
  const step = order.find((candidate) => candidate.title === title);
  if (!step) throw new Error(`no step ${title}`);
  return step;
};

const without = (title: string): readonly SewingStep[] => order.filter((step) => step !== titled(title));

const movedAfter = (title: string, place: string): readonly SewingStep[] =>
  without(title).flatMap((step) => (step.title === place ? [step, titled(title)] : [step]));

const changed = (title: string, change: Partial<SewingStep>): readonly SewingStep[] =>
  order.map((step) => (step === titled(title) ? { ...step, ...change } : step));

const rows = 'Stitch the gathering rows of the insert';
const underBust = 'Gather the insert and sew the under-bust seam';
const frontPrincess = 'Sew the front princess seams';
const faceStraps = 'Face the straps along the neckline';
const setIn = 'Gather the crowns and set in the sleeves';

describe('a sewing order', () => {
  test('that can be followed has no faults', () => {
    expect(found(order)).toEqual([]);
  });

  test('is not asked of a garment that has none, such as one read from a file', () => {
    const { sewing: _, ...read } = garment;
    expect(sewingFaults(read, tape)).toEqual([]);
  });

  test('misses every step that is dropped but the trial', () => {
    for (const step of order.slice(1)) expect(found(without(step.title)), step.title).not.toEqual([]);
  });

  test('has no step that can be done before cutting out', () => {
    for (const step of order.slice(2))
      expect(found([step, ...without(step.title)]), step.title).not.toEqual([]);
  });

  test('refuses every step that is there twice', () => {
    for (const step of order)
      expect(found([...order, step]), step.title).toContain(`sewing-step-twice: ${step.title}`);
  });

  test('calls the step that comes too early by its place, counted from one', () => {
    const sewing = movedAfter('Mark', setIn);
    const early = faults(sewing).find(({ code, path }) => code === 'sewing-too-early' && path === 'side');
    const place = sewing.findIndex(({ sews = [] }) => sews.includes('side')) + 1;
    expect(early?.message).toContain(`: step ${place}, “`);
  });

  test('says of every step that sews or turns how its raw edges are kept, of one that does as much of both too', () => {
    const both = {
      title: 'Both',
      how: [],
      sews: ['side'],
      turns: [{ piece: 'skirt side front', edge: 'hem' }],
    };
    expect(found([...order, both])).toContain('sewing-no-finish: Both');
    expect(found([...order, { title: 'Neither', how: [] }])).not.toContain('sewing-no-finish: Neither');
  });

  test('tells all faults in whole sentences', () => {
    for (const { message, severity } of faults(order.toReversed())) {
      expect(message).toMatch(/^[A-Z].*\.$/);
      expect(message).not.toMatch(/undefined|NaN|Infinity/);
      expect(severity).toBe('error');
    }
  });
});

describe('of two steps that depend on each other', () => {
  test.each([
    ['Cut out', 'Mark'],
    ['Mark', 'Sew the straps at the shoulder'],
    ['Work the buttonholes for the drawstrings', 'Fold the insert and stitch its casing'],
    ['Fold the insert and stitch its casing', 'Thread the drawstrings'],
    ['Thread the drawstrings', frontPrincess],
    ['Fold the insert and stitch its casing', rows],
    [rows, underBust],
    [underBust, frontPrincess],
    ['Sew the straps at the shoulder', faceStraps],
    [faceStraps, 'Sew the straps on'],
    ['Sew the straps on', 'Close the outer edges of the straps'],
    ['Close the outer edges of the straps', setIn],
    [frontPrincess, 'Sew the straps on'],
    ['Sew the side seams', setIn],
    ['Sew the straps on', setIn],
    ['Stitch the gathering rows of the sleeves', setIn],
    ['Sew the sleeve seams', 'Turn up the sleeve hems as casings'],
    ['Turn up the sleeve hems as casings', 'Thread the elastic'],
    ['Thread the elastic', 'Close the casings'],
    ['Sew the sleeve seams', setIn],
    ['Sew the gores of the skirt together', 'Join the skirt to the bodice'],
    ['Sew the side seams', 'Join the skirt to the bodice'],
    ['Sew the gores of the skirt together', 'Hem the skirt'],
  ])('“%s” comes before “%s”', (first, then) => {
    const swapped = without(then).flatMap((step) => (step.title === first ? [titled(then), step] : [step]));
    expect(found(swapped)).not.toEqual([]);
  });

  test('those that do not may change places', () => {
    const backFirst = without('Sew the back princess seams').flatMap((step) =>
      step.title === underBust ? [titled('Sew the back princess seams'), step] : [step],
    );
    expect(found(backFirst)).toEqual([]);
  });
});

describe('every seam is sewn exactly once', () => {
  test('so one left out is named', () => {
    expect(found(changed('Sew the side seams', { sews: [], presses: [] }))).toContain(
      'sewing-seam-left-out: side',
    );
  });

  test('so one sewn twice is named, with both steps', () => {
    const [twice] = faults(changed('Sew the sleeve seams', { sews: ['sleeve seam', 'side'] })).filter(
      ({ code }) => code === 'sewing-seam-twice',
    );
    expect(twice?.path).toBe('side');
    const sewing = changed('Sew the sleeve seams', { sews: ['sleeve seam', 'side'] });
    const places = sewing.flatMap(({ sews = [] }, place) => (sews.includes('side') ? [place + 1] : []));
    expect(twice?.message).toContain(`steps ${places.join(' and ')}.`);
  });

  test('and every hem turned exactly once', () => {
    expect(found(changed('Hem the skirt', { turns: [] }))).toContain(
      'sewing-edge-left-out: skirt side front/hem',
    );
    const hem = { piece: 'skirt side front', edge: 'hem' };
    expect(found(changed('Sew the side seams', { turns: [hem] }))).toContain(
      'sewing-edge-twice: skirt side front/hem',
    );
  });
});

describe('nothing is sewn before its parts exist', () => {
  test('before its pieces are cut and marked', () => {
    expect(found(movedAfter('Mark', setIn))).toContain('sewing-too-early: side');
  });

  test('before the pieces along one side are sewn to each other', () => {
    expect(found(movedAfter('Sew the straps on', setIn))).toContain('sewing-too-early: armhole, crown');
  });

  test('nor an edge before the one that was cut to be sewn first', () => {
    expect(found(movedAfter('Sew the sleeve seams', setIn))).toContain('sewing-against-cut: sleeve seam');
    expect(found(movedAfter('Sew the side seams', 'Join the skirt to the bodice'))).toContain(
      'sewing-against-cut: side',
    );
    expect(found(movedAfter(underBust, frontPrincess))).toContain(
      'sewing-against-cut: under-bust, right end',
    );
  });

  test('nor a seam crossed before it is pressed', () => {
    expect(found(changed('Sew the side seams', { presses: [] }))).toContain('sewing-not-pressed: side');
  });

  test('nor a step before what it says it needs', () => {
    // Once for each part of the strap; and its inner edge, in two layers of two parts, was cut to be sewn before them.
    expect(found(movedAfter(faceStraps, 'Sew the straps on'))).toEqual([
      'sewing-too-early: Sew the straps on',
      'sewing-too-early: Sew the straps on',
      ...Array.from({ length: 4 }, () => 'sewing-against-cut: strap, inner edge'),
    ]);
    expect(found(movedAfter('Stay-stitch neckline and armholes', setIn))).toEqual([
      `sewing-too-early: ${setIn}`,
      `sewing-too-early: ${setIn}`,
    ]);
  });
});

describe('no gather is pulled before its rows are stitched', () => {
  test('be it asked for by the step or not', () => {
    expect(found(movedAfter(rows, underBust))).toContain(`sewing-too-early: ${underBust}`);
    const unasked = changed(underBust, { needs: [] });
    expect(found(unasked)).toEqual([]);
    expect(found(unasked.filter((step) => step.title !== rows))).toContain(`sewing-too-early: ${underBust}`);
  });

  test('nor a gathered seam sewn before the gathers are drawn up', () => {
    expect(found(changed(setIn, { brings: [] }))).toContain('sewing-too-early: armhole, crown');
  });

  test('and rows that nobody gathers by, or gathers without rows on the pattern, are named', () => {
    expect(found(changed(setIn, { brings: [] }))).toContain('sewing-left-out: sleeve/crown');
  });
});

describe('no step closes off a later one', () => {
  const buttonholes = 'Work the buttonholes for the drawstrings';
  const casing = 'Fold the insert and stitch its casing';

  test('buttonholes are worked before the casing is stitched', () => {
    const late = movedAfter(buttonholes, casing);
    expect(found(late)).toContain(`sewing-too-late: ${buttonholes}`);
  });

  test('cords are threaded before the seam that closes the ends of their casing', () => {
    const late = movedAfter('Thread the drawstrings', frontPrincess);
    expect(found(late)).toContain('sewing-too-late: Thread the drawstrings');
  });

  test('nothing is threaded into a casing without a way in', () => {
    const brings: readonly State[] = [{ piece: 'sleeve', is: 'casing stitched', at: 'casing' }];
    expect(found(changed('Turn up the sleeve hems as casings', { brings }))).toContain(
      'sewing-too-early: Thread the elastic',
    );
  });

  test('an opening is closed after the elastic is in, and never left', () => {
    expect(found(movedAfter('Thread the elastic', 'Close the casings'))).toContain(
      'sewing-too-early: Close the casings',
    );
    expect(found(without('Close the casings'))).toEqual(['sewing-left-out: sleeve/casing']);
  });
});

describe('everything named is there', () => {
  test.each<[string, Partial<SewingStep>]>([
    ['seam', { sews: ['side', 'no such seam'] }],
    ['pressed seam', { presses: ['side', 'no such seam'] }],
    ['turned edge', { turns: [{ piece: 'sleeve', edge: 'no such edge' }] }],
    ['caught edge', { catches: [{ piece: 'no such piece', edge: 'hem' }] }],
    ['notion', { uses: ['no such notion'] }],
    ['piece', { needs: [{ piece: 'no such piece', is: 'cut' }] }],
    ['place', { brings: [{ piece: 'sleeve', is: 'stay-stitched', at: 'no such place' }] }],
    ['place left out', { brings: [{ piece: 'sleeve', is: 'stay-stitched' }] }],
    ['closed place', { closes: [{ piece: 'sleeve', is: 'threaded', at: 'no such place' }] }],
  ])('an unknown %s is refused', (_, change) => {
    expect(found(changed('Sew the side seams', change))).toContain('sewing-no-such-part: Sew the side seams');
  });

  test('and every notion is used', () => {
    expect(found(changed('Thread the elastic', { uses: [] }))).toEqual(['sewing-left-out: sleeve elastic']);
  });
});
