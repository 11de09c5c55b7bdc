import { styleText } from 'node:util';
import type { Report } from '../../engine/checks/report.ts';
import type { Session } from '../session.ts';
import { plain } from './plain.ts';
import { wrapped } from './wrap.ts';

/** The first line of every answer about a garment: what was checked, for whom, and how it came out. */
export const heading = (session: Session, { garment, body, ok }: Report): string =>
  verdictLine(session, `${garment} for ${body}`, ok);

/** What was checked, and how it came out: wrapped to the terminal, the verdict in colour where colours are wanted. */
export function verdictLine(session: Session, checked: string, ok: boolean, remark = ''): string {
  const verdict = ok ? 'all true' : 'NOT TRUE';
  const words = `${wrapped(`${plain(checked)}: ${verdict}${remark}`, session.columns)}\n\n`;
  const at = words.lastIndexOf(verdict);
  // Broken in two, it stays as it is.
  if (!session.colour || at < 0) return words;
  // The session knows what its stream can show: newer Nodes would ask the stream of this process again.
  const shown = styleText(['bold', ok ? 'green' : 'red'], verdict, { validateStream: false });
  return words.slice(0, at) + shown + words.slice(at + verdict.length);
}
