import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Fonts } from '../../engine/render/pdf/fonts.ts';

/** Source Sans 3 (SIL Open Font License 1.1), as its package ships it. */
const face = (weight: string): Promise<Uint8Array> =>
  readFile(
    fileURLToPath(
      import.meta.resolve(`@expo-google-fonts/source-sans-3/${weight}/SourceSans3_${weight}.ttf`),
    ),
  );

/** The font that is embedded in every PDF. */
export async function readFonts(): Promise<Fonts> {
  const [regular, bold] = await Promise.all([face('400Regular'), face('700Bold')]);
  return { regular, bold };
}
