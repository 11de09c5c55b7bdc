import { styleText } from 'node:util';
import type { Report } from '../engine/checks/report.ts';
import { plain } from './plain.ts';
import type { Session } from './session.ts';
import { wrapped } from './wrap.ts';

/** The first line of every answer: what was checked, for whom, and how it came out. */
export function heading(session: Session, { garment, body, ok }: Report): string {
  const verdict = ok ? 'all true' : 'NOT TRUE';
  const words = wrapped(`${plain(`${garment} for ${body}`)}: ${verdict}`, session.columns);
  const at = words.lastIndexOf(verdict);
  // Broken in two, it stays as it is.
  if (!session.colour || at < 0) return `${words}\n\n`;
  return `${words.slice(0, at)}${styleText(['bold', ok ? 'green' : 'red'], verdict)}\n\n`;
}
