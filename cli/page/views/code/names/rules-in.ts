import { lately } from './lately.ts';
import type { NameMeaning } from './name-meaning.ts';
import { treeOf } from './tree-of.ts';

/** No row of a table is nearly as long. */
const longestRow = 2000;

/** The rules of each table in a file, by the name of the table and of the rule. */
export const rulesIn = lately((text: string): ReadonlyMap<string, ReadonlyMap<string, NameMeaning>> => {
  const tables = new Map<string, Map<string, NameMeaning>>();
  if (!text.includes('ruleTable(')) return tables;
  const tree = treeOf(text);
  if (!tree) return tables;
  const cut = ({ from, to }: { readonly from: number; readonly to: number }): string => text.slice(from, to);
  tree.iterate({
    enter: ({ node }) => {
      if (node.name !== 'VariableDeclaration') return;
      const [name, call] = [node.getChild('VariableDefinition'), node.getChild('CallExpression')];
      const called = call?.firstChild;
      const given = call?.getChild('ArgList');
      const rows = given?.getChild('ObjectExpression');
      const letter = given?.getChild('String');
      if (!name || !called || !rows || cut(called) !== 'ruleTable') return;
      const rules = new Map<string, NameMeaning>();
      for (const [i, row] of rows.getChildren('Property').entries()) {
        const rule = row.getChild('PropertyDefinition');
        const written = row.getChild('ArrayExpression');
        if (!rule || !written || written.to - written.from > longestRow) continue;
        const parts = cut(written)
          .slice(1, -1)
          .split(/,(?=(?:[^']*'[^']*')*[^']*$)/)
          .map((part) => part.trim().replace(/^'|'$/g, ''));
        const [value = '', unit = '', says = '', source = ''] = parts;
        const number = `${letter ? cut(letter).slice(1, -1) : ''}${i + 1}`;
        rules.set(cut(rule), {
          signature: `rule ${number}, ${value} ${unit}`,
          says: `${says}${source === '' || /^\w+$/.test(source) ? '' : ` (${source})`}`,
        });
      }
      tables.set(cut(name), rules);
    },
  });
  return tables;
});
