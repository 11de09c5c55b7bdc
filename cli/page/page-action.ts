import type { MeasurementName } from '../../drafts/index.ts';
import type { BodyForm } from './body-form.ts';
import type { Linked } from './link.ts';
import type { PageAnswer } from './messages.ts';
import type { OwnAction } from './own-states.ts';
import type { PageView } from './view-names.ts';

/** Everything that can happen to the page. */
export type PageAction =
  | OwnAction
  | { readonly does: 'view'; readonly view: PageView }
  | { readonly does: 'widen'; readonly wide: boolean }
  | { readonly does: 'measure'; readonly name: MeasurementName; readonly text: string }
  | {
      readonly does: 'say';
      readonly about: Partial<
        Pick<BodyForm, 'name' | 'age' | 'units' | 'cup' | 'reconcile' | 'sizes' | 'rest'>
      >;
    }
  /** What is more likely than what was written, for some measurements that contradict others. */
  | { readonly does: 'take sizes'; readonly sizes: BodyForm['sizes'] }
  | { readonly does: 'be sure'; readonly name: MeasurementName; readonly sure: boolean }
  /** What was there before a file was opened is there again. */
  | { readonly does: 'take back' }
  | { readonly does: 'leave out the rest' }
  | { readonly does: 'choose garment'; readonly garment: string }
  /** The code as it is written draws the garment, which it calls so, or the program's own draft does again. */
  | { readonly does: 'draw by code'; readonly garment: string }
  | { readonly does: 'draw by the program' }
  /** Without a text: as the draft has it by itself. */
  | { readonly does: 'choose'; readonly name: string; readonly text: string | undefined }
  | { readonly does: 'choose nothing' }
  /** A link was opened: what it says takes the place of what is there. */
  | { readonly does: 'follow'; readonly linked: Linked }
  /** What was being changed is left: what comes next can be undone apart. */
  | { readonly does: 'settle' }
  /** Nothing has been changed for a while: there is time to write the sheet and walk it. */
  | { readonly does: 'pause' }
  | { readonly does: 'undo' | 'redo' }
  | { readonly does: 'link body'; readonly linksBody: boolean }
  | { readonly does: 'seek'; readonly sought: string }
  | { readonly does: 'note'; readonly notice: string | undefined }
  | { readonly does: 'forget' }
  /** Whether the browser could keep what was typed. */
  | { readonly does: 'keeps'; readonly keeps: boolean }
  | { readonly does: 'hear'; readonly answer: PageAnswer };
