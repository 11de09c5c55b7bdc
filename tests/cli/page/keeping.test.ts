import { expect, test } from 'vitest';
import { keepingFrom, type TextStore } from '../../../cli/page/keeping.ts';
import { withKept } from '../../../cli/page/kept.ts';
import { reduce } from '../../../cli/page/reducer.ts';
import { emptyState, type PageState } from '../../../cli/page/state.ts';

/* What pages that are open at the same time keep in the one place that they share. */

/** A place for a text, which may be full. */
function place(): TextStore & { full: boolean } {
  let kept: string | null = null;
  const made = {
    full: false,
    text: () => kept,
    keep: (text: string | undefined) => {
      if (made.full && text !== undefined) return false;
      kept = text ?? null;
      return true;
    },
  };
  return made;
}

/** A page that is opened now. */
function opened(store: TextStore) {
  let state: PageState = withKept(emptyState, store.text());
  const keeping = keepingFrom(state, store);
  const keep = () => keeping.keep(state);
  return {
    types: (bust: string) => {
      state = reduce(state, { does: 'measure', name: 'bustGirth', text: bust });
      return keep();
    },
    looks: () => {
      state = reduce(state, { does: 'view', view: 'pieces' });
      return keep();
    },
    closes: keep,
    deletes: () => {
      state = reduce(state, { does: 'forget' });
      keeping.forget(state);
    },
  };
}

const bustIn = (store: TextStore) => withKept(emptyState, store.text()).form.sizes.bustGirth;

test('a page on which nothing was done leaves what the other has kept since, and what it has deleted', () => {
  const store = place();
  const first = opened(store);
  first.types('90');
  const second = opened(store);
  second.types('91');
  first.looks();
  first.closes();
  expect(bustIn(store)).toBe('91');
  second.deletes();
  first.closes();
  expect(store.text()).toBeNull();
  first.types('92');
  expect(bustIn(store)).toBe('92');
  second.closes();
  expect(bustIn(store)).toBe('92');
});

test('the view that is looked at is kept, and nothing where nothing was typed', () => {
  const store = place();
  const page = opened(store);
  expect([page.looks(), store.text()]).toEqual([true, null]);
  page.types('90');
  expect(withKept(emptyState, store.text()).view).toBe('pieces');
  page.types('');
  expect(store.text()).toBeNull();
});

test('that it could not be kept is told, and it is tried again', () => {
  const store = place();
  const page = opened(store);
  store.full = true;
  expect([page.types('90'), page.closes()]).toEqual([false, false]);
  store.full = false;
  expect([page.closes(), bustIn(store)]).toEqual([true, '90']);
});
