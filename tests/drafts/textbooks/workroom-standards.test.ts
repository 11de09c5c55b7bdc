import { describe, expect, it } from 'vitest';
import { sleeveRules } from '../../../drafts/sleeve/rules.ts';
import { workroomRules } from '../../../drafts/workroom-rules.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../../engine/geometry/edge.ts';
import { drafted, edgeOf, figureOf, pieceOf, shippedBody } from '../drafted.ts';
import { inches, lengthOf } from './measured.ts';

const dress = drafted('dress', shippedBody('leading-lady'));

describe('seams and hems', () => {
  // Association of Sewing and Design Professionals, Standards of Quality for Custom Clothing, p. 19: 5/8 in at the armhole,
  // trimmed to 1/4 in at the underarm. A manual of ladies’ tailoring: 1.5 cm, pressed open. Course cards on ASTM D6193:
  // 1/2 in on straight seams.
  it.each([
    ['Standards of Quality, p. 19', inches(5 / 8)],
    ['ladies’ tailoring', 15],
    ['ASTM D6193 course cards', inches(1 / 2)],
  ])(
    'with the allowance of %s are cut one allowance out, and end flush with their neighbours',
    (_, width) => {
      const other = drafted('bodice', shippedBody('leading-lady'), {
        seamAllowance: width,
        armholeAllowance: width,
      });
      expect(other.report.ok).toBe(true);
      for (const edge of ['armhole upper', 'armhole underarm', 'princess'])
        expect(edgeOf(other, 'side back', edge).allowance).toBeCloseTo(width, 9);
    },
  );

  it('are 1/2 in, as industry sews straight seams, unless chosen; trimmed to 1/4 in at the underarm', () => {
    expect(dress.styling.seamAllowance).toBeCloseTo(inches(1 / 2), 9);
    expect(workroomRules.underarmTrim.value).toBeCloseTo(inches(1 / 4), 9);
    const setIn = dress.garment.sewing?.find(({ title }) => title.startsWith('Gather the crowns'));
    expect(setIn?.amounts?.map(({ mm }) => mm)).toContain(workroomRules.underarmTrim.value);
  });

  // L. I. Baldt, Clothing for Women, 1916: 1 1/2 in is turned up on a skirt. Turned up by t, a gore that is a sector of a
  // cone would have an edge longer by 2 t times its angle than the line it meets: ours is cut narrower by that.
  it('turn up about 1 1/2 in at the hem of a gore, cut so that nothing of its edge is left to be eased in', () => {
    const hem = edgeOf(dress, 'skirt side front', 'hem');
    expect(Math.abs(hem.allowance - inches(1.5))).toBeLessThan(2);
    const [, , , left] = pieceOf(dress, 'skirt side front').edges;
    const seam = edgeOf(dress, 'skirt side front', 'side').curves.at(-1);
    const cut = dress.cutLines.get('skirt side front');
    if (!seam || !cut || !left) throw new Error('no seam');
    const lean = Math.atan2(seam.to.x - seam.from.x, seam.to.y - seam.from.y);
    const easedIn = 2 * hem.allowance * (2 * lean);
    expect(easedIn).toBeGreaterThan(20);
    // The raw edge: the lowest line of the piece. On it lie the ends of both seams' allowances, square to their slant.
    const raw = cut.curves.filter(({ from, to }) => Math.min(from.y, to.y) > seam.to.y + hem.allowance / 2);
    const slant = Math.cos(Math.atan(2 * lean));
    const ends = (edgeOf(dress, 'skirt side front', 'side').allowance + left.allowance) / slant;
    const stitched = edgeLength({ name: 'raw edge', curves: raw }) - ends;
    const radius = edgeLength(hem) / (2 * lean);
    expect(Math.abs(stitched - 2 * lean * (radius - hem.allowance))).toBeLessThan(1);
  });
});

describe('the casing of the neckline', () => {
  // Sewing & Craft Alliance, guideline 12.150: a drawstring comes out of two buttonholes, usually at centre front.
  it('lets the drawstrings out by two buttonholes, either side of centre front, inside the casing', () => {
    const { marks, lines } = pieceOf(dress, 'insert');
    const holes = marks.filter(({ kind }) => kind === 'buttonhole');
    expect(holes).toHaveLength(2);
    expect(holes.reduce((sum, { at }) => sum + at.x, 0)).toBeCloseTo(0, 9);
    const casing = lines.find(({ kind }) => kind === 'casing');
    const depth = casing ? edgeStart(casing).y : 0;
    for (const { at, length } of holes) {
      expect(at.y - length / 2).toBeGreaterThan(0);
      expect(at.y + length / 2).toBeLessThan(depth);
    }
  });

  it.each([8, 30])('%i mm deep has buttonholes that stay inside it', (casingDepth) => {
    const other = drafted('bodice', shippedBody('leading-lady'), { casingDepth });
    const { marks } = pieceOf(other, 'insert');
    for (const { length } of marks.filter(({ kind }) => kind === 'buttonhole'))
      expect(length).toBeLessThanOrEqual(casingDepth - 4);
    expect(other.report.ok).toBe(true);
  });
});

describe('the casing of the sleeve', () => {
  // A sewing handbook, chapter on casings: a strip 1 in wider than the elastic, 1/4 in turned under on each long edge, has a
  // channel 1/2 in wider than the elastic. Guideline 12.150: 1/4 in. Ours, turned up in one, keeps to the narrower.
  it('is as roomy as the guideline says, and narrower than a strip sewn on', () => {
    const { elasticWidth } = dress.styling;
    const hem = edgeOf(dress, 'sleeve', 'hem');
    const casing = pieceOf(dress, 'sleeve').lines.find(({ kind }) => kind === 'casing');
    const channel = casing ? edgeStart(hem).y - edgeStart(casing).y : 0;
    expect(channel - Number(elasticWidth)).toBeCloseTo(inches(1 / 4), 9);
    expect(channel - Number(elasticWidth)).toBeLessThan(inches(1 - 2 / 4));
    expect(hem.allowance - channel).toBeCloseTo(sleeveRules.turnUnder.value, 9);
  });

  // Limb girth less half an inch, lapped by half an inch: sewing lessons, read second-hand.
  it.each(['understudy', 'scene-painter'])('holds elastic 1/2 in shorter than the arm of the %s', (name) => {
    expect(figureOf(drafted('dress', shippedBody(name)), 'arm girth less hem elastic')).toBeCloseTo(
      inches(1 / 2),
      9,
    );
  });
});

describe('gathers (J. W. Stephenson, Cutting and Draping)', () => {
  // Light goods as much again (2:1), medium half as much again (1.5:1); sheer 2.5 to 3 on three lesson pages.
  it.each(['AA', 'C', 'E', 'H'])(
    'of the insert lie between half as much again, less a trifle, and those of sheer cloth: cup %s',
    (cup) => {
      const body = {
        name: cup,
        units: 'cm',
        bustGirth: 98,
        waistGirth: 76,
        hipGirth: 102,
        backNeckPointToWaist: 41,
        cup,
      };
      const bodice = drafted('bodice', body);
      const flat = lengthOf(bodice, 'insert', 'bottom');
      const finished = 2 * edgeLength(edgeOf(bodice, 'centre front', 'under-bust'));
      expect(flat / finished).toBeGreaterThan(1.5 - 0.06);
      expect(flat / finished).toBeLessThan(3);
    },
  );

  it('of the crown lie between those of medium and those of light cloth', () => {
    const crown = dress.report.seams.find(({ name }) => name === 'armhole, crown');
    const ratio = (crown?.lengthA ?? 0) / (crown?.lengthB ?? 1);
    expect(ratio).toBeGreaterThan(1.5);
    expect(ratio).toBeLessThan(2);
  });

  // The flat length is the finished one times the ratio: 20 in at 2.5 take 50.
  it('of 20 in of neckline take 50 in flat at 2.5', () => {
    const plain = drafted('bodice', shippedBody('leading-lady'), { necklineFullness: 1 });
    const full = drafted('bodice', shippedBody('leading-lady'), {
      necklineFullness: 2.5,
      insertFullness: 2.5,
    });
    const width = (evaluation: typeof dress) => {
      const fold = edgeOf(evaluation, 'insert', 'neckline');
      return edgeEnd(fold).x - edgeStart(fold).x;
    };
    expect((20 * width(full)) / width(plain)).toBeCloseTo(50, 6);
  });
});
