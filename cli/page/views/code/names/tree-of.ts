import { typescriptLanguage } from '@codemirror/lang-javascript';
import type { CodeTree } from './code-tree.ts';

/** No file of a draft is nearly as long, nor takes nearly as long to parse (ms): of what is, nothing is known. */
const [longest, patience] = [30_000, 500];

/** The syntax of a text; nothing where that is too much to look for: somebody may have written it for that. */
export function treeOf(text: string): CodeTree | undefined {
  if (text.length > longest) return undefined;
  const parse = typescriptLanguage.parser.startParse(text);
  const until = performance.now() + patience;
  while (performance.now() < until) {
    const tree = parse.advance();
    if (tree) return tree;
  }
  return undefined;
}
