import { wornViewNames } from '../../engine/render/form/view.ts';
import { mapNames, wornMaps } from '../../engine/wear/shown/maps.ts';
import { shownWorn } from '../../engine/wear/shown/shown-worn.ts';
import { wornGltf } from '../../engine/wear/shown/worn-gltf.ts';
import { type DrawnAs, wornPicture } from '../../engine/wear/shown/worn-picture.ts';
import { pngWriter } from '../files/png.ts';
import type { Reader } from '../output/reader.ts';
import type { WornScene } from '../page/worn/scene.ts';
import type { PutOn } from './hanging.ts';
import { type WornPage, wornPage } from './worn-page.ts';
import { wornScene } from './worn-scene.ts';

/** How much is drawn. */
export interface HowMuch {
  /** The maps, each from every side. */
  readonly maps: boolean;
  /** Only what takes no time: the views in black line, and the page. */
  readonly quick: boolean;
}

/** Everything that is drawn of a worn garment, by the names of its files. */
export async function wearFiles(
  { form, stand, hung, raised }: PutOn,
  words: Pick<WornScene, 'title' | 'says'>,
  { units }: Reader,
  said: Omit<WornPage, 'scene'>,
  { maps: mapped, quick }: HowMuch,
): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const { title } = words;
  const shown = shownWorn(form, hung, stand);
  const maps = wornMaps(hung, stand, units);
  const files = new Map<string, string | Uint8Array>();
  const png = quick ? undefined : await pngWriter();
  const draw = (name: string, view: (typeof wornViewNames)[number], as: DrawnAs): void => {
    const svg = wornPicture(shown, view, title, as);
    files.set(`${name}.svg`, svg);
    if (png) files.set(`${name}.png`, png(svg));
  };
  for (const view of wornViewNames) {
    if (!quick) draw(view, view, 'tints');
    files.set(`${view}-lines.svg`, wornPicture(shown, view, title, 'lines'));
    if (mapped) for (const name of mapNames) draw(`${view}-${name}`, view, maps[name]);
  }
  if (raised && png) {
    const svg = wornPicture(shownWorn(raised.form, raised.hung, stand), 'front', `${title}, arms raised`);
    files.set('front-raised.svg', svg);
    files.set('front-raised.png', png(svg));
  }
  files.set('worn.glb', wornGltf(form, hung, title));
  const html = await wornPage({ ...said, scene: wornScene(shown, Object.values(maps), words, units) });
  if (html !== undefined) files.set('worn.html', html);
  return files;
}
