import { HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import type { Extension } from '@codemirror/state';
import { EditorView } from '@codemirror/view';
import { tags } from '@lezer/highlight';

/** Black on paper: what is said, what is computed and what is only a word of the language are told apart by weight and slant. */
const highlighting = HighlightStyle.define([
  { tag: [tags.keyword, tags.modifier, tags.operatorKeyword], fontWeight: '600' },
  { tag: [tags.string, tags.special(tags.string)], color: 'var(--string)' },
  { tag: [tags.comment], color: 'var(--quiet)', fontStyle: 'italic' },
  { tag: [tags.number, tags.bool], color: 'var(--number)' },
  { tag: [tags.typeName], color: 'var(--quiet)' },
]);

const look = EditorView.theme({
  '&': { fontSize: '0.875rem', backgroundColor: 'var(--paper)', color: 'var(--ink)', height: '100%' },
  '.cm-content': {
    fontFamily: 'ui-monospace, "DejaVu Sans Mono", Menlo, Consolas, monospace',
    caretColor: 'var(--ink)',
  },
  '.cm-cursor': { borderLeftColor: 'var(--ink)' },
  '.cm-scroller': { overflow: 'auto' },
  '.cm-gutters': {
    backgroundColor: 'var(--paper)',
    color: 'var(--quiet)',
    borderRight: '1px solid var(--hair)',
  },
  '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'transparent' },
  '.cm-lit': { backgroundColor: 'var(--lit-ground)' },
  '&.cm-focused': { outline: '3px solid var(--focus)', outlineOffset: '-3px' },
  '.cm-selectionBackground, &.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground': {
    backgroundColor: 'var(--hair)',
  },
  '.cm-panels': { backgroundColor: 'var(--paper)', color: 'var(--ink)' },
  '.cm-tooltip': { backgroundColor: 'var(--paper)', color: 'var(--ink)', border: '1px solid var(--ink)' },
  // The marks of the library are pictures in the style sheet, which the page's security policy does not load.
  '.cm-lint-marker-error, .cm-lint-marker-warning, .cm-lint-marker-info': {
    content: '"▸"',
    color: 'var(--wrong)',
  },
  '.cm-lintRange-error, .cm-lintRange-warning, .cm-lintRange-info': {
    backgroundImage: 'none',
    textDecoration: 'underline wavy var(--wrong)',
  },
  '.cm-tooltip-autocomplete > ul > li': { fontFamily: 'inherit', padding: '0.2rem 0.5rem' },
  '.cm-tooltip-autocomplete > ul > li[aria-selected]': {
    backgroundColor: 'var(--ink)',
    color: 'var(--paper)',
  },
  '.cm-completionDetail': { color: 'inherit', opacity: '0.75', fontStyle: 'normal' },
  '.cm-completionMatchedText': { fontWeight: '600', textDecoration: 'none' },
  '.cm-meaning': { maxWidth: '28rem', padding: '0.4rem 0.6rem' },
  '.cm-meaning p': { margin: '0.3rem 0 0', fontFamily: 'var(--sans)' },
  '.cm-diagnosticAction': { backgroundColor: 'var(--ink)', color: 'var(--paper)' },
  '.cm-changedLine': { backgroundColor: 'var(--lit-ground) !important' },
  '.cm-changedText': { background: 'none !important', textDecoration: 'underline' },
  '.cm-deletedChunk': { backgroundColor: 'transparent', color: 'var(--quiet)' },
});

/** How code looks, in the colours of the page. */
export const codeLook: Extension = [syntaxHighlighting(highlighting), look];
