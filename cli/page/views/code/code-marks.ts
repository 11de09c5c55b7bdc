import type { Diagnostic } from '@codemirror/lint';
import type { EditorState } from '@codemirror/state';
import type { EditorView } from '@codemirror/view';
import type { Stretch } from './names/read-code.ts';
import type { NameSlip } from './names/slips.ts';
import type { CodeIssue } from './questions.ts';
import type { TypeProblem } from './types/messages.ts';

/** The line of this number, from 1; the nearest that there is. */
export const lineOf = (line: number, { doc }: EditorState) =>
  doc.line(Math.min(Math.max(1, line), doc.lines));

/** What was found when the code ran, on its line. */
export function issueMark(
  { source, severity, message }: CodeIssue,
  state: EditorState,
): readonly Diagnostic[] {
  if (!source) return [];
  const { from, to } = lineOf(source.line, state);
  return [{ from, to, severity: severity === 'note' ? 'info' : severity, message }];
}

/** Whether two stretches have a place in common. */
export const overlap = (a: Stretch, b: Stretch): boolean => a.from < b.to && b.from < a.to;

/** What types do not allow. */
export const typeMark = ({ from, to, message }: TypeProblem): Diagnostic => ({
  from,
  to,
  severity: 'warning',
  message,
});

/** A name that there is not; what may be meant instead is written by one press. */
export function slipMark({ from, to, message, instead }: NameSlip): Diagnostic {
  const actions =
    instead === undefined
      ? []
      : [
          {
            name: `Write “${instead}”`,
            apply: (view: EditorView, at: number, end: number) =>
              view.dispatch({ changes: { from: at, to: end, insert: instead } }),
          },
        ];
  return { from, to, severity: 'warning', message, actions };
}
