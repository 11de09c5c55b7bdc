import { printable } from '../markup.ts';

/** HTML that has been escaped; only `html` makes it, so text cannot be taken for markup by mistake. */
export interface Html {
  readonly markup: string;
}

export type Content = Html | string | readonly Content[];

/** An element of HTML, or of SVG inside it. Attributes without a value are left out; all text is escaped. */
export function html(
  name: string,
  attributes: Readonly<Record<string, string | undefined>>,
  ...content: readonly Content[]
): Html {
  const given = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [` ${key}="${escaped(value)}"`],
  );
  const opened = `<${name}${given.join('')}>`;
  return { markup: isVoid(name) ? opened : `${opened}${content.map(markupOf).join('')}</${name}>` };
}

/** A whole file. */
export const page = (head: readonly Html[], body: readonly Html[]): string =>
  `<!DOCTYPE html>\n${html('html', { lang: 'en' }, html('head', {}, ...head), html('body', {}, ...body)).markup}\n`;

const isVoid = (name: string): boolean => name === 'meta';

const markupOf = (content: Content): string => {
  if (typeof content === 'string') return escaped(content);
  return 'markup' in content ? content.markup : content.map(markupOf).join('');
};

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escaped = (text: string): string => printable(text).replace(/[&<>"']/g, (c) => entities[c] ?? c);
