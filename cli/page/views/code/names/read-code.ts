import { type Declared, declaredIn } from './declared.ts';
import { lately } from './lately.ts';
import { treeOf } from './tree-of.ts';

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

const nothing: ReadCode = {
  ...{ imports: [], passed: [], declared: new Map(), exported: new Set(), names: new Set() },
  ...{ uses: [], members: [], whole: false },
};

const known = lately((text: string): ReadCode => {
  const tree = treeOf(text);
  if (!tree) return nothing;
  const cut = ({ from, to }: Stretch): string => text.slice(from, to);
  const others = takings(text);
  const imports = others.flatMap(({ passes, taken }) => (passes ? [] : taken));
  const passed = others.flatMap(({ passes, taken }) => (passes ? taken : []));
  const [uses, members]: [Used[], Used[]] = [[], []];
  const names = new Set(imports.map(({ local }) => local));
  const exported = new Set<string>();
  const parted = new Set<string>();
  let whole = true;
  tree.iterate({
    enter: ({ node }) => {
      const { name, from, to } = node;
      if (others.some((each) => from >= each.from && to <= each.to)) return false;
      switch (name) {
        case 'ExportDeclaration':
          for (const each of node.getChild('ExportGroup')?.getChildren('VariableName') ?? []) {
            const alias = each.nextSibling?.name === 'as' ? each.nextSibling.nextSibling : each;
            if (each.prevSibling?.name !== 'as' && alias) exported.add(cut(alias));
          }
          if (node.getChild('default')) exported.add('default');
          break;
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

/** An import, or an export of what another file has, up to its end; the parser knows no `type` within the brackets of an export.
 * Its parts are bounded, else some texts would take for ever to look through. */
const taking =
  /^[ \t]*(import|export)\s{1,40}(type\s{1,40})?(?:([\w$]{1,200})\s{0,40}(?:,\s{0,40})?)?(\{[^}]{0,5000}\}|\*(?:\s{1,40}as\s{1,40}[\w$]+)?)?\s{0,40}from\s{0,40}['"]([^'"\n]*)['"]/gm;

interface Taking extends Stretch {
  readonly passes: boolean;
  readonly taken: readonly Taken[];
}

/** What a file takes from others, import by import. */
const takings = (text: string): readonly Taking[] =>
  [...text.matchAll(taking)].map(
    ({ 0: whole, 1: word, 2: types, 3: own, 4: group = '', 5: source = '', index }) => {
      const isAllTypes = types !== undefined;
      const at = (part: string): number => index + whole.indexOf(part, word?.length);
      const taken: Taken[] = [];
      const add = (name: string, local: string, isType: boolean, from: number): void => {
        taken.push({ name, local, source, isType: isAllTypes || isType, from, to: from + name.length });
      };
      if (own !== undefined) add('default', own, false, at(own));
      const star = /^\*(?:\s+as\s+([\w$]+))?/.exec(group);
      if (star) add('*', star[1] ?? '*', false, at('*'));
      else
        for (const part of group.slice(1, -1).matchAll(/[^,]+/g)) {
          const found = /^(\s*(?:type\s+)?)([\w$]+)(?:\s+as\s+([\w$]+))?\s*$/.exec(part[0]);
          const [, before = '', name, local = name] = found ?? [];
          if (name !== undefined && local !== undefined)
            add(name, local, /type\s/.test(before), at(group) + 1 + part.index + before.length);
        }
      return { passes: word === 'export', taken, from: index, to: index + whole.length };
    },
  );
