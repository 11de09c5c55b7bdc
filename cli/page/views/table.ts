import type { ComponentType } from 'preact';
import type { PageView } from '../view-names.ts';
import type { FileViewProps } from './view.ts';

/**
 * Where each view's code is. All are loaded when they are first wanted; what a view alone shows, and what it needs of heavy
 * libraries, is in its own folder. Its line about name and address is in `view-names.ts`.
 */
export const viewTable: Readonly<Record<PageView, () => Promise<ComponentType<FileViewProps>>>> = {
  measure: async () => (await import('./measure/measure.tsx')).Measure,
  choose: async () => (await import('./choose/choose.tsx')).Choose,
  pieces: async () => (await import('./pieces/pieces.tsx')).Pieces,
  checks: async () => (await import('./checks/checks.tsx')).Checks,
  cloth: async () => (await import('./cloth/cloth.tsx')).Cloth,
  sizes: async () => (await import('./sizes/sizes.tsx')).Sizes,
  learn: async () => (await import('./learn/learn.tsx')).Learn,
  code: async () => {
    // The editor's libraries first, part by part: all at once they would keep the page for 30 ms, on a busy machine for 75.
    await import('./code/code-look.ts');
    await import('./code/names/tree-of.ts');
    return (await import('./code/code.tsx')).Code;
  },
  take: async () => (await import('./take/take.tsx')).Take,
  worn: async () => (await import('./worn/worn.tsx')).Worn,
};
