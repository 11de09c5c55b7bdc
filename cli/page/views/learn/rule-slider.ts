import type { Slider } from '../choose/slider.ts';
import type { TaughtRule } from './lesson.ts';

/** Places on the slider of a rule, about. */
const places = 100;

/**
 * The slider of a rule, for rules declare no range: from nothing to twice as much, or as far below nothing as above it where
 * it is less; on round figures, and a share no further than one.
 */
export function ruleSlider(own: number, unit: TaughtRule['unit']): Slider {
  const most = own === 0 ? (unit === 'ratio' ? 1 : 10) : Math.abs(own) * 2;
  const share = unit === 'ratio' && own > 0 && own < 1;
  const reach = share ? Math.min(1, most) : most;
  const step = 10 ** Math.floor(Math.log10(reach / (places / 2)));
  const max = Math.ceil(reach / step - 1e-9) * step;
  return { min: own <= 0 ? -max : 0, max, step };
}
