import type { CodeNode } from './code-tree.ts';

/** What a name is declared as: as it is written, and what is said of it there. */
export interface Declared {
  /** The declaration without what it does: `name(what: It): Comes`. */
  readonly signature: string;
  /** The docstring above it; empty where there is none. */
  readonly says: string;
  readonly isExported: boolean;
  readonly isType: boolean;
  /** Of a class or an interface: what it has, by name. */
  readonly members?: ReadonlyMap<string, Pick<Declared, 'signature' | 'says'>>;
}

/** No signature is shown longer. */
const longest = 320;

/** What is declared at the top of a file. */
export function declaredIn(top: CodeNode, text: string): ReadonlyMap<string, Declared> {
  const found = new Map<string, Declared>();
  for (let node = top.firstChild; node; node = node.nextSibling) {
    const isExported = node.name === 'ExportDeclaration';
    const inner = isExported
      ? declarations.map((kind) => node?.getChild(kind)).find((child) => child)
      : declarations.includes(node.name)
        ? node
        : undefined;
    if (!inner) continue;
    const says = docstringBefore(node, text);
    for (const [name, signature] of signaturesOf(inner, text)) {
      const isType = /^(Interface|TypeAlias)/.test(inner.name);
      const members = membersOf(inner, text);
      found.set(name, { signature, says, isExported, isType, ...(members ? { members } : {}) });
    }
  }
  return found;
}

const declarations = [
  'VariableDeclaration',
  'FunctionDeclaration',
  'ClassDeclaration',
  'InterfaceDeclaration',
  'TypeAliasDeclaration',
];

/** The docstring that stands right above. */
function docstringBefore(node: CodeNode, text: string): string {
  const before = node.prevSibling;
  if (before?.name !== 'BlockComment') return '';
  const written = text.slice(before.from, before.to);
  if (!written.startsWith('/**')) return '';
  return written
    .slice(3, -2)
    .split('\n')
    .map((line) => line.replace(/^\s*\* ?/, '').trim())
    .join(' ')
    .trim();
}

const shortened = (text: string): string => {
  const plain = text.replace(/\s+/g, ' ').trim();
  return plain.length > longest ? `${plain.slice(0, longest)} …` : plain;
};

/** Each name of a declaration with its signature. */
function signaturesOf(node: CodeNode, text: string): readonly (readonly [string, string])[] {
  const cut = (from: number, to: number): string => shortened(text.slice(from, to));
  const pattern = node.getChild('ObjectPattern') ?? node.getChild('ArrayPattern');
  if (pattern)
    return [...text.slice(pattern.from, pattern.to).matchAll(/[\w$]+(?=\s*[,}\]])/g)].map(
      ([each]) => [each, each] as const,
    );
  const name = node.getChild('VariableDefinition') ?? node.getChild('TypeDefinition');
  if (!name) return [];
  const called = text.slice(name.from, name.to);
  const body = node.getChild('Block') ?? node.getChild('ClassBody');
  if (node.name === 'TypeAliasDeclaration' || node.name === 'InterfaceDeclaration')
    return [[called, cut(node.from, node.to).replace(/;$/, '')]];
  if (node.name !== 'VariableDeclaration') return [[called, cut(name.from, body?.from ?? node.to)]];
  return node.getChildren('VariableDefinition').map((each) => {
    const own = text.slice(each.from, each.to);
    const next = each.nextSibling;
    const type = next?.name === 'TypeAnnotation' ? next : undefined;
    const value = (type ?? each).nextSibling?.nextSibling;
    if (type) return [own, own + cut(type.from, type.to)] as const;
    if (value?.name === 'ArrowFunction') {
      const arrow = value.getChild('Arrow');
      return [own, own + cut(value.from, arrow?.from ?? value.to)] as const;
    }
    return [own, value ? `${own} = ${cut(value.from, value.to)}` : own] as const;
  });
}

/** What a class or an interface has, but for what is its own alone. */
function membersOf(node: CodeNode, text: string): Declared['members'] {
  const body =
    node.getChild('ClassBody') ??
    node.getChild('ObjectType') ??
    (node.name === 'TypeAliasDeclaration' ? node.lastChild : undefined);
  if (!body || !/^(ClassBody|ObjectType)$/.test(body.name)) return undefined;
  const members = new Map<string, Pick<Declared, 'signature' | 'says'>>();
  for (let each = body.firstChild; each; each = each.nextSibling) {
    const name = each.getChild('PropertyDefinition');
    if (!name) continue;
    const end = each.getChild('Block')?.from ?? each.getChild('Equals')?.from ?? each.to;
    const signature = shortened(text.slice(name.from, end)).replace(/;$/, '');
    members.set(text.slice(name.from, name.to), { signature, says: docstringBefore(each, text) });
  }
  return members;
}
