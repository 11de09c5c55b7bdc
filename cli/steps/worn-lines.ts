import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import * as z from 'zod';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Picture } from '../../engine/render/booklet/picture.ts';
import { readLines } from '../../engine/wear/shown/read-lines.ts';
import { readTextFile } from '../input/read-data.ts';
import { unusable } from '../input/unusable.ts';

/** How high the finished garment is drawn on a page, mm. */
const HIGH = 72;

/** Neither a drawing nor the figures of a worn garment are larger, bytes. */
const LARGEST = 2_000_000;

const schema = z.object({ garment: z.string(), draftedFor: z.string() });

/** The finished garment from the front and the back, from the folder that `bodkin wear` wrote of it. */
export async function wornLines(folder: string, garment: Garment): Promise<readonly Picture[]> {
  const there = await stat(folder).catch(() => undefined);
  if (!there?.isDirectory())
    throw unusable('cannot-read', folder, `${folder} is no folder that “bodkin wear” wrote.`);
  const { garment: name, draftedFor } = figuresIn(
    folder,
    await readTextFile(join(folder, 'worn.json'), LARGEST),
  );
  if (name !== garment.name || draftedFor !== garment.body)
    throw unusable(
      'worn-of-another',
      folder,
      `${folder} shows the ${name.slice(0, 40)} drafted for ${draftedFor.slice(0, 40)}, not the ${garment.name} for ${garment.body}: wear that one first.`,
    );
  return Promise.all(
    ['front', 'back'].map(async (view) => {
      const file = join(folder, `${view}-lines.svg`);
      const picture = readLines(await readTextFile(file, LARGEST), HIGH);
      if (picture) return picture;
      throw unusable('cannot-read', file, `${file} is no drawing that “bodkin wear” wrote.`);
    }),
  );
}

function figuresIn(folder: string, text: string): z.infer<typeof schema> {
  try {
    return schema.parse(JSON.parse(text));
  } catch {
    throw unusable('cannot-read', folder, `The worn.json in ${folder} is not as “bodkin wear” wrote it.`);
  }
}
