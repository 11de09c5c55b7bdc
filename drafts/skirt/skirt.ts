import { figure } from '../../engine/pattern/construction-log.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import type { Girth } from '../../engine/pattern/garment.ts';
import type { StylingOf } from '../../engine/pattern/styling.ts';
import { drawGarment } from '../draw-garment.ts';
import { sayPinned, sayTaken } from '../fitting/say-taken.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import { makingChoices, waistEase } from '../making-choices.ts';
import { skirtShapedBy } from '../shaped-by.ts';
import { skirtChoices } from './choices.ts';
import { drawSkirt } from './draft.ts';
import { type ByGore, goreNames, mapGores } from './gore-sizes.ts';
import { skirtRules as rules } from './rules.ts';
import { takenFromGirth, takenFromGores } from './taken-in.ts';

const choices = [waistEase, ...skirtChoices, ...makingChoices] as const;

/** The gored skirt on its own. */
export const skirt: Draft<StylingOf<typeof choices>> = {
  name: 'skirt',
  title: 'Gored skirt',
  choices,
  shapedBy: skirtShapedBy,
  draw: (body, styling, solver) =>
    drawGarment('skirt', body, (drawn, _sketch, log) => () => {
      const { waistGirth } = drawn.size;
      const half = log.mm(
        'Half waist',
        `(waist girth ${figure(waistGirth)} + ease ${styling.waistEase}) / 2`,
        (waistGirth + styling.waistEase) / 2,
        'measurement and styling',
      );
      const balance = rules.sideBalance.value;
      const [front, back] = [(half + balance) / 2, (half - balance) / 2];
      const centre = rules.centreGoreWaist.value;
      const drafted: ByGore = {
        'centre front': centre * front,
        'side front': (1 - centre) * front,
        'side back': (1 - centre) * back,
        'centre back': centre * back,
      };
      log.say(
        'Waist of the gores',
        `half of it ${figure(front)} mm in front and ${figure(back)} mm behind, ${balance} mm apart; of each the centre gore has ${centre}`,
        rules.centreGoreWaist,
      );
      const taken = takenFromGores(drawn.fitting, 'waist');
      const waist = mapGores((name) => drafted[name] - taken[name]);
      const less = takenFromGirth(taken);
      sayPinned(drawn.fitting, ['waist'], log);
      sayTaken('waist', 2 * half, waistGirth, less, log);
      const drawnSkirt = drawSkirt(drawn, styling, waist, log, solver);
      if (!drawnSkirt.ok) return drawnSkirt;
      const { value, issues } = drawnSkirt;
      const waistOf = (level: string, named: (gore: string) => string): Girth => ({
        level,
        body: waistGirth,
        ease: styling.waistEase - less,
        parts: goreNames.map((name) => ({
          kind: 'edge',
          piece: named(`skirt ${name}`),
          edge: 'waist',
          times: 2,
        })),
      });
      const waists = [
        waistOf('waist', (gore) => gore),
        ...(styling.skirtLining === 'none' ? [] : [waistOf('waist, lining', liningOf)]),
      ];
      return { ok: true, value: { ...value, girths: [...waists, ...value.girths] }, issues };
    }),
};
