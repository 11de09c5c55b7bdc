import { styleText } from 'node:util';
import type { Report } from '../engine/checks/report.ts';
import { plain } from './plain.ts';
import type { Session } from './session.ts';

/** The first line of every answer: what was checked, for whom, and how it came out. */
export function heading(session: Session, { garment, body, ok }: Report): string {
  const verdict = ok ? 'all true' : 'NOT TRUE';
  const shown = session.colour ? styleText(['bold', ok ? 'green' : 'red'], verdict) : verdict;
  return `${plain(`${garment} for ${body}`)}: ${shown}\n\n`;
}
