import { figure } from '../../engine/pattern/construction-log.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { drawGarment } from '../draw-garment.ts';
import { makingChoices, waistEase } from '../making-choices.ts';
import { skirtChoices } from './choices.ts';
import { drawSkirt } from './draft.ts';
import type { ByGore } from './gore-sizes.ts';
import { skirtRules as rules } from './rules.ts';

const choices = [waistEase, ...skirtChoices, ...makingChoices] as const;

/** The gored skirt on its own. */
export const skirt: Draft<StylingOf<typeof choices>> = {
  name: 'skirt',
  title: 'Gored skirt',
  choices,
  draw: (body, styling) =>
    drawGarment('skirt', body, (drawn, _sketch, log) => () => {
      const { waistGirth } = drawn.size;
      const half = log.mm(
        'Half waist',
        `(waist girth ${figure(waistGirth)} + ease ${styling.waistEase}) / 2`,
        (waistGirth + styling.waistEase) / 2,
        'measurement and styling',
      );
      const waist: ByGore = {
        'centre front': rules.centreFrontWaist.value * half,
        'side front': rules.sideFrontWaist.value * half,
        'side back': rules.sideFrontWaist.value * half,
        'centre back': rules.centreFrontWaist.value * half,
      };
      log.say(
        'Waist of the gores',
        `centre gores ${figure(waist['centre front'])} mm, side gores ${figure(waist['side front'])} mm`,
        rules.centreFrontWaist,
      );
      const drawnSkirt = drawSkirt(drawn, styling, waist, log);
      if (!drawnSkirt.ok) return drawnSkirt;
      const { value, issues } = drawnSkirt;
      const girth = {
        level: 'waist',
        body: waistGirth,
        ease: styling.waistEase,
        parts: value.pieces.map(({ name }) => ({
          kind: 'edge' as const,
          piece: name,
          edge: 'waist',
          times: 2,
        })),
      };
      return { ok: true, value: { ...value, girths: [girth, ...value.girths] }, issues };
    }),
};
