import { describe, expect, test } from 'vitest';
import { linkedIn, linkTo } from '../../../cli/page/link.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import { emptyState, type PageState, workOf } from '../../../cli/page/state.ts';
import { viewEntries } from '../../../cli/page/view-names.ts';

const measured = reduce(emptyState, { does: 'measure', name: 'bustGirth', text: '36 1/4' });
const state = reduce(measured, { does: 'choose', name: 'sleeve', text: 'long puff' });

const followed = (link: string, from: PageState = emptyState): PageState => {
  const linked = linkedIn(`#${link}`);
  if (!linked) throw new Error(`no link: ${link}`);
  return reduce(from, { does: 'follow', linked });
};

describe('a link', () => {
  test.each(viewEntries.map(({ name }) => name))('leads to %s with the garment and its choices', (view) => {
    const there = followed(linkTo(view, workOf(state), false));
    expect(there).toMatchObject({ view, garment: 'dress', choices: { dress: { sleeve: 'long puff' } } });
    expect(there.form).toEqual(emptyState.form);
    expect(there.notice).toBe('The choices of the link are open.');
  });

  test('has her measurements only where that was asked for', () => {
    const link = linkTo('pieces', workOf(state), true);
    expect(followed(link).form.sizes).toEqual(state.form.sizes);
    expect(followed(link).notice).toBe('The choices and measurements of the link are open.');
    expect(linkTo('pieces', workOf(state), false)).not.toMatch(/bust|36/);
  });

  test('leaves the way back to what was there', () => {
    const there = followed('worn/skirt?', state);
    expect(there.garment).toBe('skirt');
    expect(reduce(there, { does: 'take back' })).toMatchObject({ garment: 'dress', form: state.form });
  });

  test.each(['', 'pieces', 'nowhere/dress?', 'choose/dress', '../choose/dress?', 'choose/dress?a=b&&{'])(
    'is none where it cannot be read as one: %s',
    (hash) => {
      expect(linkedIn(`#${hash}`)?.form).toBeUndefined();
      if (!hash.startsWith('choose/dress?')) expect(linkedIn(`#${hash}`)).toBeUndefined();
    },
  );
});
