import type { typescriptLanguage } from '@codemirror/lang-javascript';

/** A place in the syntax of a file, with what it consists of. */
export type CodeNode = ReturnType<typeof typescriptLanguage.parser.parse>['topNode'];
