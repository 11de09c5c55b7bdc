import { StateEffect, StateField } from '@codemirror/state';
import { Decoration, type DecorationSet, EditorView } from '@codemirror/view';

/** Lights these lines, counted from 1, and no others. */
export const lighten = StateEffect.define<{ readonly from: number; readonly to: number } | undefined>();

/** The lines that are lit: those of the step that is shown. */
export const litLines = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update: (before, { changes, effects, state }) => {
    let now = before.map(changes);
    for (const effect of effects) {
      if (!effect.is(lighten)) continue;
      const { from, to } = effect.value ?? { from: 1, to: 0 };
      const marks = [];
      for (let line = from; line <= Math.min(to, state.doc.lines); line++)
        marks.push(Decoration.line({ class: 'cm-lit' }).range(state.doc.line(line).from));
      now = Decoration.set(marks);
    }
    return now;
  },
  provide: (field) => EditorView.decorations.from(field),
});
