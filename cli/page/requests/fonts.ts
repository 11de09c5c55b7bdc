import type { Fonts } from '../../../drafts/index.ts';

const face = async (name: string): Promise<Uint8Array> => {
  const answer = await fetch(new URL(`fonts/${name}.ttf`, import.meta.url));
  if (!answer.ok) throw new Error(`the font ${name} is not there`);
  return new Uint8Array(await answer.arrayBuffer());
};

let read: Promise<Fonts> | undefined;

/** The font that is embedded in every PDF, fetched from beside the page when it is first wanted. */
export function readFonts(): Promise<Fonts> {
  read ??= Promise.all([face('regular'), face('bold')]).then(
    ([regular, bold]) => ({ regular, bold }),
    (error: unknown) => {
      read = undefined;
      throw error;
    },
  );
  return read;
}
