import ts from 'typescript-in-javascript';
import { type DraftFiles, importedBy } from '../../../../own-draft/draft-files.ts';
import type { TypedName, TypedPart, TypeProblem } from './messages.ts';

/** The declarations that a draft is checked against, by path: the program’s at `/drafts` and `/engine`, the language’s at `/lib`. */
export type Declarations = Readonly<Record<string, string>>;

/** Knows the types of the files of a draft as they are written now. */
export interface TypeService {
  readonly tell: (changed: DraftFiles, gone: readonly string[]) => void;
  readonly files: () => readonly string[];
  /** What the types of a file do not allow; nothing where it cannot be read at all, which is said elsewhere. */
  readonly problems: (file: string) => readonly TypeProblem[];
  readonly meaning: (file: string, at: number) => TypedName | undefined;
  /** What may stand behind a dot that ends at a place. */
  readonly parts: (file: string, at: number) => readonly TypedPart[];
}

/** Edited files lie apart from the program’s own of the same names; a file may come from anywhere, and be called anything. */
const own = '/own/';
const isUsual = (file: string): boolean => /^[\w-]+(?:\/[\w-]+)*\.ts$/.test(file);
/** All that can be imported from the program. */
const program = '/program.d.ts';
const programText = "export * from './drafts/index.ts';\nexport * from './drafts/engine-parts.ts';\n";

/** As the project’s own (`tsconfig.json`), but what is merely unused is nobody’s mistake, and types may be imported like values. */
const options: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2023,
  lib: ['lib.es2023.d.ts'],
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  allowImportingTsExtensions: true,
  noEmit: true,
  // A draft in JavaScript has no types to be wrong, but others may import it.
  allowJs: true,
  strict: true,
  noUncheckedIndexedAccess: true,
  exactOptionalPropertyTypes: true,
  noImplicitOverride: true,
  noImplicitReturns: true,
  noFallthroughCasesInSwitch: true,
  skipLibCheck: true,
  types: [],
};

/** “Cannot find name”, in its several forms: a browser has names that are declared nowhere here, and others are said by the editor. */
const unknownName = new Set([2304, 2552, 2580, 2584]);

/**
 * Checks a draft in the browser as the compiler does on the command line: TypeScript’s own language service over files in memory.
 */
export function typeService(declarations: Declarations): TypeService {
  const texts = new Map<string, { readonly text: string; readonly version: string }>();
  let versions = 0;
  const put = (path: string, text: string): void => {
    texts.set(path, { text, version: String(++versions) });
  };
  for (const [path, text] of Object.entries(declarations)) put(path, text);
  put(program, programText);
  /** Where each edited file lies. */
  const places = new Map<string, string>();
  const fileAt = (path: string): string | undefined => [...places].find(([, place]) => place === path)?.[0];
  const placeFor = (file: string): string =>
    isUsual(file) ? own + file : `${own}${++versions}.${/\.m?js$/.test(file) ? 'js' : 'ts'}`;
  const found = (specifier: string, from: string): string | undefined => {
    const file = fileAt(from);
    if (file === undefined) return declared(specifier, from);
    const by = importedBy(file, specifier, new Set(places.keys()));
    if (typeof by === 'object') return places.get(by.file);
    if (by === undefined || specifier === 'bodkin') return by && program;
    const path = declared(specifier, `/drafts/${isUsual(file) ? file : ''}`);
    // What is run finds the name wherever it was sought, and so do types.
    return path !== undefined && texts.has(path) ? path : program;
  };
  const host: ts.LanguageServiceHost = {
    getCompilationSettings: () => options,
    getScriptFileNames: () => [...places.values()],
    getScriptVersion: (path) => texts.get(path)?.version ?? '0',
    getScriptSnapshot: (path) => {
      const known = texts.get(path);
      return known && ts.ScriptSnapshot.fromString(known.text);
    },
    getCurrentDirectory: () => '/',
    getDefaultLibFileName: () => '/lib/lib.es2023.d.ts',
    fileExists: (path) => texts.has(path),
    readFile: (path) => texts.get(path)?.text,
    resolveModuleNameLiterals: (literals, from) =>
      literals.map(({ text }) => {
        const path = found(text, from);
        return {
          resolvedModule:
            path === undefined || !texts.has(path)
              ? undefined
              : { resolvedFileName: path, extension: extensionOf(path) },
        };
      }),
  };
  const service = ts.createLanguageService(host);
  return {
    tell: (changed, gone) => {
      for (const file of gone) {
        texts.delete(places.get(file) ?? '');
        places.delete(file);
      }
      for (const [file, text] of Object.entries(changed)) {
        const place = places.get(file) ?? placeFor(file);
        places.set(file, place);
        put(place, text);
      }
    },
    files: () => [...places.keys()],
    problems: (file) => {
      const path = places.get(file);
      if (path === undefined || service.getSyntacticDiagnostics(path).length > 0) return [];
      return service.getSemanticDiagnostics(path).flatMap((diagnostic) => problemOf(file, diagnostic));
    },
    parts: (file, at) => {
      const path = places.get(file);
      const list = path === undefined ? undefined : service.getCompletionsAtPosition(path, at, undefined);
      return list?.isMemberCompletion
        ? list.entries.slice(0, mostParts).map(({ name, kind }) => ({ name, kind }))
        : [];
    },
    meaning: (file, at) => {
      const path = places.get(file);
      const info = path === undefined ? undefined : service.getQuickInfoAtPosition(path, at);
      if (!info) return undefined;
      const { start, length } = info.textSpan;
      return {
        from: start,
        to: start + length,
        meaning: {
          signature: plain(ts.displayPartsToString(info.displayParts)),
          says: ts.displayPartsToString(info.documentation),
        },
      };
    },
  };
}

const extensionOf = (path: string): string =>
  path.endsWith('.d.ts') ? ts.Extension.Dts : path.endsWith('.js') ? ts.Extension.Js : ts.Extension.Ts;

/** The declarations of a module by its path; none of a library. */
const declared = (specifier: string, from: string): string | undefined =>
  specifier.startsWith('.')
    ? new URL(specifier, `file://${from}`).pathname.replace(/(?:\.[jt]s)?$/, '.d.ts')
    : undefined;

function problemOf(file: string, diagnostic: ts.Diagnostic): readonly TypeProblem[] {
  const { code, start = 0, length = 0, messageText } = diagnostic;
  const text = diagnostic.file?.text ?? '';
  const name = text.slice(start, start + length);
  if (unknownName.has(code) && name in globalThis) return [];
  const message = plain(ts.flattenDiagnosticMessageText(messageText, '\n'))
    .split('\n')
    .slice(0, lines)
    .join('\n');
  return [{ file, from: start, to: start + length, line: text.slice(0, start).split('\n').length, message }];
}

/** So many things that could be written are told. */
const mostParts = 300;

/** So many lines of the compiler’s reasoning are told. */
const lines = 4;

/** Names of types without where they are declared. */
const plain = (text: string): string => text.replace(/import\("[^"]*"\)\./g, '').slice(0, 2000);
