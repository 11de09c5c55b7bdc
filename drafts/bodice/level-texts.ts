import type { Body } from '../../engine/body/body.ts';
import { figure } from '../../engine/pattern/construction-log.ts';
import type { BodiceStyling } from './choices.ts';

/** What the level lines of the panels say: the finished girth they add up to. */
export interface LevelTexts {
  readonly bust: string;
  readonly underBust: string;
}

export function levelTexts(body: Body, styling: BodiceStyling): LevelTexts {
  const finished = (level: string, girth: number, ease: number): string =>
    `${level}: finished girth ${figure(girth + ease)} mm`;
  return {
    bust: finished('bust', body.size.bustGirth, styling.bustEase),
    underBust: finished('under-bust', body.size.underBustGirth, styling.underBustEase),
  };
}
