import { describe, expect, test } from 'vitest';
import { namesForEditor } from '../../../cli/page/names-for-editor.ts';
import type { Known } from '../../../cli/page/views/code/names/known.ts';
import { slipsIn } from '../../../cli/page/views/code/names/slips.ts';
import { garmentFiles } from '../../../cli/page/views/code/sources.ts';
import * as program from '../../../drafts/index.ts';
import { sources } from './drafts-in-files.ts';

const names = namesForEditor(new URL('../../../', import.meta.url).pathname);
const choices = Object.values(program.garments).flatMap((draft) => draft.choices);

describe('names', () => {
  test.each(Object.keys(program.garments))('none in %s', (name) => {
    const files = garmentFiles(sources, name);
    const found = Object.keys(files).flatMap((file) =>
      slipsIn({ file, files, program: names, choices } satisfies Known).map(
        ({ message }) => `${file}: ${message}`,
      ),
    );
    expect(found).toEqual([]);
  });
});
