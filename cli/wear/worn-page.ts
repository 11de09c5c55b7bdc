import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { type Html, html, page } from '../../engine/render/booklet/html.ts';
import { capital } from '../../engine/text/capital.ts';
import { inPackage } from '../beside.ts';
import type { WornScene } from '../page/worn/scene.ts';
import { sceneText } from '../page/worn/scene-text.ts';

/** A table as it stands on the page: the titles of its columns, and its rows; whatever is a number is right-aligned by its place. */
export interface PageTable {
  readonly caption: string;
  readonly heads: readonly string[];
  /** Which columns are figures. */
  readonly figures: readonly number[];
  readonly rows: readonly (readonly string[])[];
}

/** All that the page of a worn garment says beside what it shows. */
export interface WornPage {
  readonly scene: WornScene;
  readonly lead: string;
  /** What is made of the figures, then the figures. */
  readonly tables: readonly PageTable[];
  readonly cannotKnow: readonly string[];
}

/**
 * The page of a worn garment, one file that needs no network: its script and its style are the program's own, the only ones
 * that its policy lets run, and whatever comes from a file is text or numbers. Nothing where the script was not built.
 */
export async function wornPage(content: WornPage): Promise<string | undefined> {
  const built = await Promise.all([read('worn.js'), read('style.css')]).catch(() => undefined);
  if (!built) return undefined;
  const [script, style] = built;
  const { scene, lead, tables, cannotKnow } = content;
  const [first = '', ...rest] = cannotKnow;
  const policy = `default-src 'none'; script-src '${digest(script)}'; style-src '${digest(style)}'; base-uri 'none'; form-action 'none'`;
  const head = [
    html('meta', { charset: 'utf-8' }),
    html('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
    html('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    html('meta', { name: 'color-scheme', content: 'light dark' }),
    html('meta', { name: 'referrer', content: 'no-referrer' }),
    html('title', {}, scene.title),
    html('style', {}, { markup: style }),
  ];
  return page(head, [
    html(
      'main',
      {},
      html('h1', {}, capital(scene.title)),
      html('p', { class: 'caution' }, html('b', {}, first)),
      html('p', {}, lead),
      html('noscript', {}, 'To be turned it needs JavaScript; every figure stands below without it.'),
      html('div', { id: 'stage' }),
      tables.map(table),
      html('h2', {}, 'What this cannot know'),
      html(
        'ul',
        {},
        [first, ...rest].map((each) => html('li', {}, each)),
      ),
    ),
    // Data: a browser runs no script of this type, and nothing in it can end it.
    html('script', { type: 'application/json', id: 'scene' }, { markup: harmless(sceneText(scene)) }),
    html('script', {}, { markup: script }),
  ]);
}

/** Whatever might end a script, or begin another, is written as JSON can write every sign. */
const harmless = (text: string): string => text.replaceAll('<', '\\u003c');

const read = (name: string): Promise<string> => readFile(inPackage(`.dist/worn/${name}`), 'utf8');

/** What a policy knows a script or a style by (Content Security Policy Level 3). */
const digest = (text: string): string => `sha256-${createHash('sha256').update(text).digest('base64')}`;

const table = ({ caption, heads, figures, rows }: PageTable): readonly Html[] => [
  html('h2', {}, caption),
  html(
    'div',
    { class: 'table', tabindex: '0', role: 'region', 'aria-label': caption },
    html(
      'table',
      {},
      html(
        'thead',
        {},
        html(
          'tr',
          {},
          heads.map((each) => (each === '' ? html('td', {}) : html('th', { scope: 'col' }, each))),
        ),
      ),
      html(
        'tbody',
        {},
        rows.map((row) =>
          html(
            'tr',
            {},
            row.map((cell, i) => html('td', figures.includes(i) ? { class: 'figure' } : {}, cell)),
          ),
        ),
      ),
    ),
  ),
];
