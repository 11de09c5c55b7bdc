import type { Draft } from '../../engine/pattern/draft.ts';
import { smallGarment } from './render/small-garment.ts';

/** A draft of two pieces whose seam is as wrong as its styling asks for. */
export const bib: Draft = {
  name: 'bib',
  title: 'A bib of two pieces',
  choices: [
    { kind: 'number', name: 'misfit', unit: 'mm', default: 0, min: 0, max: 9, help: 'how wrong the seam is' },
    {
      kind: 'word',
      name: 'notchType',
      default: 'slit',
      words: ['slit', 'wedge'],
      help: 'how notches are drawn',
    },
    {
      kind: 'word',
      name: 'mood',
      default: 'good',
      words: ['good', 'bad', 'broken'],
      help: 'whether it drafts',
    },
  ],
  shapedBy: [],
  draw: (body, { misfit, mood }) => {
    if (mood === 'broken') throw new Error('scissors lost');
    if (mood === 'bad')
      return {
        ok: false,
        issues: [{ code: 'own-no-bib', severity: 'error', path: 'princess', message: 'No bib today.' }],
      };
    const seams = smallGarment.seams.map((seam) => ({ ...seam, ease: Number(misfit) }));
    const steps = [
      {
        number: 1,
        title: 'Fold',
        text: 'the cloth',
        says: ['the cloth'],
        source: 'common practice, no source',
        from: [],
      },
    ];
    return { ok: true, value: { ...smallGarment, body: body.name, seams, steps }, issues: [] };
  },
};

/** Measurements that can be used, in cm. */
export const measurements = {
  name: 'prompter',
  units: 'cm',
  bustGirth: 92,
  underBustGirth: 78,
  waistGirth: 74,
  hipGirth: 98,
  backNeckPointToWaist: 41,
};
