import { type javascriptLanguage, typescriptLanguage } from '@codemirror/lang-javascript';
import type { TurnedRules } from '../../../../drafts/index.ts';
import type { DraftFiles } from '../../../own-draft/draft-files.ts';

type Tree = ReturnType<typeof javascriptLanguage.parser.parse>;
type Node = Tree['topNode'];

/** Where the value of a rule is written: from here to there in a file. */
interface RuleValuePlace {
  readonly file: string;
  readonly from: number;
  readonly to: number;
}

/** The files of a draft with other values written into the rows of its rules; rules that stand nowhere are left out. */
export function withRulesWritten(
  files: DraftFiles,
  turned: TurnedRules,
): { readonly files: DraftFiles; readonly file: string | undefined } {
  const changed: Record<string, string> = {};
  let last: string | undefined;
  for (const [id, value] of Object.entries(turned)) {
    const now = { ...files, ...changed };
    const place = placeOfRule(now, id);
    if (!place) continue;
    const text = now[place.file] ?? '';
    changed[place.file] = `${text.slice(0, place.from)}${value}${text.slice(place.to)}`;
    last = place.file;
  }
  return { files: changed, file: last };
}

/** Rules are numbered in their order behind the letter of their table: the value is the first of its row. */
function placeOfRule(files: DraftFiles, id: string): RuleValuePlace | undefined {
  const [, letter = '', number = ''] = /^(\D+)(\d+)$/.exec(id) ?? [];
  for (const [file, text] of Object.entries(files)) {
    if (!text.includes('ruleTable(')) continue;
    const rows = rowsOf(typescriptLanguage.parser.parse(text).topNode, text, letter);
    const value = rows?.[Number(number) - 1]?.getChild('ArrayExpression')?.firstChild?.nextSibling;
    if (value) return { file, from: value.from, to: value.to };
  }
  return undefined;
}

/** The rows of the table of this letter. */
function rowsOf(top: Node, text: string, letter: string): readonly Node[] | undefined {
  let rows: readonly Node[] | undefined;
  top.cursor().iterate(({ node }) => {
    if (node.name !== 'CallExpression' || rows) return;
    const given = node.getChild('ArgList');
    const named = given?.getChild('String');
    const table = given?.getChild('ObjectExpression');
    const called = node.firstChild;
    if (!named || !table || !called || text.slice(called.from, called.to) !== 'ruleTable') return;
    if (text.slice(named.from + 1, named.to - 1) === letter) rows = table.getChildren('Property');
  });
  return rows;
}
