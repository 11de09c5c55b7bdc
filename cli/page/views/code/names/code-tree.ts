import type { typescriptLanguage } from '@codemirror/lang-javascript';

/** The syntax of a file. */
export type CodeTree = ReturnType<typeof typescriptLanguage.parser.parse>;

/** A place in it, with what it consists of. */
export type CodeNode = CodeTree['topNode'];
