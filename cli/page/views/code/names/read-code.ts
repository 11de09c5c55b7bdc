import { typescriptLanguage } from '@codemirror/lang-javascript';
import { type Declared, declaredIn } from './declared.ts';
import { lately } from './lately.ts';

export type CodeTree = ReturnType<typeof typescriptLanguage.parser.parse>;
export type CodeNode = CodeTree['topNode'];

/** A stretch of a text. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A name that a file takes from another, as the other calls it and as it is called here. */
export interface Taken extends Stretch {
  readonly name: string;
  readonly local: string;
  /** Where from, as it is written. */
  readonly source: string;
  /** Taken as a type alone: nothing of it is left when the code is run. */
  readonly isType: boolean;
}

/** A name where it is used; with `of` it is what stands before the dot. */
export interface Used extends Stretch {
  readonly name: string;
  readonly of?: string;
  /** Whether that is itself a part of something, or was taken out of something by its name. */
  readonly parted?: true;
}

/** What a file says of names, before it is run. */
export interface ReadCode {
  readonly imports: readonly Taken[];
  /** What it hands on of other files; with the name `*` all. */
  readonly passed: readonly Taken[];
  /** What it declares of its own at its top, and which of it others may take. */
  readonly declared: ReadonlyMap<string, Declared>;
  readonly exported: ReadonlySet<string>;
  /** Everything that is called something anywhere in it: scopes are not told apart. */
  readonly names: ReadonlySet<string>;
  readonly uses: readonly Used[];
  readonly members: readonly Used[];
  /** Whether the parser could make sense of all of it. */
  readonly whole: boolean;
}

/** Reads a file by its syntax alone. */
export const readCode = (text: string): ReadCode => known(text);

const known = lately((text: string): ReadCode => {
  const tree = typescriptLanguage.parser.parse(text);
  const cut = ({ from, to }: Stretch): string => text.slice(from, to);
  const [imports, passed]: [Taken[], Taken[]] = [[], []];
  const [uses, members]: [Used[], Used[]] = [[], []];
  const names = new Set<string>();
  const exported = new Set<string>();
  const parted = new Set<string>();
  let whole = true;
  tree.iterate({
    enter: ({ node }) => {
      const { name, from, to } = node;
      switch (name) {
        case 'ImportDeclaration': {
          const taken = takenBy(node, text);
          imports.push(...taken);
          for (const { local } of taken) names.add(local);
          return false;
        }
        case 'ExportDeclaration': {
          if (node.getChild('Star') || node.getChild('ExportGroup')) {
            const taken = takenBy(node, text);
            if (node.getChild('String')) passed.push(...taken);
            else {
              uses.push(...taken.map((each) => ({ name: each.name, from: each.from, to: each.to })));
              for (const { local } of taken) exported.add(local);
            }
            return false;
          }
          if (node.getChild('default')) exported.add('default');
          break;
        }
        case 'VariableDefinition':
        case 'TypeDefinition':
          names.add(cut(node));
          if (node.parent?.name === 'PatternProperty') parted.add(cut(node));
          break;
        case 'VariableName':
        case 'TypeName':
          uses.push({ name: cut(node), from, to });
          break;
        case 'Property':
          // A name alone is also what it stands for.
          if (node.firstChild?.name === 'PropertyDefinition' && !node.firstChild.nextSibling)
            uses.push({ name: cut(node), from, to });
          break;
        case 'MemberExpression': {
          const [object, property] = [node.firstChild, node.lastChild];
          if (!object || property?.name !== 'PropertyName') break;
          const isPart = object.name === 'MemberExpression';
          const of = isPart ? object.lastChild : object;
          members.push({
            ...{ name: cut(property), of: of ? cut(of) : '', from: property.from, to },
            ...(isPart ? { parted: true } : {}),
          });
          break;
        }
        case '⚠':
          whole = false;
      }
      return true;
    },
  });
  const declared = declaredIn(tree.topNode, text);
  for (const [name, { isExported }] of declared) if (isExported) exported.add(name);
  return {
    ...{ imports, passed, declared, exported, names, uses, whole },
    members: members.map((each) => (parted.has(each.of ?? '') ? { ...each, parted: true } : each)),
  };
});

/** The names that an import or an export takes from another file. */
function takenBy(node: CodeNode, text: string): readonly Taken[] {
  const written = node.getChild('String');
  const source = written ? text.slice(written.from + 1, written.to - 1) : '';
  const group = node.getChild('ImportGroup') ?? node.getChild('ExportGroup');
  const taken: Taken[] = [];
  const allTypes = /^(?:import|export)\s+type\b/.test(text.slice(node.from, node.to));
  const star = node.getChild('Star');
  const own = node.getChild('VariableDefinition');
  if (own) {
    const local = text.slice(own.from, own.to);
    taken.push({ name: star ? '*' : 'default', local, source, isType: allTypes, from: own.from, to: own.to });
  } else if (star)
    taken.push({ name: '*', local: '*', source, isType: allTypes, from: star.from, to: star.to });
  if (!group) return taken;
  for (const part of text.slice(group.from + 1, group.to - 1).matchAll(/[^,]+/g)) {
    const found = /^(\s*(?:type\s+)?)([\w$]+)(?:\s+as\s+([\w$]+))?\s*$/.exec(part[0]);
    const [, before = '', name, local = name] = found ?? [];
    if (name === undefined || local === undefined) continue;
    const from = group.from + 1 + part.index + before.length;
    const isType = allTypes || /type\s/.test(before);
    taken.push({ name, local, source, isType, from, to: from + name.length });
  }
  return taken;
}
