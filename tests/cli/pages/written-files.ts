import { schemaNames, schemaOf } from '../../../cli/results/schemas.ts';
import { bodyJsonSchema } from '../../../engine/body/body-file.ts';
import { clothJsonSchema } from '../../../engine/cloth/cloth-file.ts';
import { codesByTopic } from '../../../engine/issue-codes/issue-codes.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { overview } from '../../drafts/pages/overview.ts';

/** The files that are written from the program, by their place in the tree, and their text. */
export const writtenFiles = (): ReadonlyMap<string, string> =>
  new Map([
    ['cli/issues.md', issuesPage()],
    ...schemaNames.map((name): [string, string] => [`cli/schemas/${name}.json`, json(schemaOf(name))]),
    ['measurements/body.schema.json', json(bodyJsonSchema())],
    ['measurements/cloth.schema.json', json(clothJsonSchema())],
    ['drafts/dress.svg', dressPicture()],
  ]);

/** Every code of an issue with what it means, topic by topic. */
const issuesPage = (): string =>
  [
    '# What an issue means',
    '',
    'Whatever Bodkin finds is told in a sentence, and with `--json` as data with a code. The codes do not change with the',
    'words. `bodkin explain CODE` prints the line of one. A garment drafted in a file of your own marks its codes with',
    '`own-` and explains them itself. This page is written by `npm run pages`.',
    ...Object.entries(codesByTopic).flatMap(([topic, codes]) => [
      '',
      `## ${topic}`,
      '',
      '| code | what it means, and what to do |',
      '|---|---|',
      ...Object.entries(codes).map(([code, means]) => `| \`${code}\` | ${means} |`),
    ]),
    '',
  ].join('\n');

/** The dress of the demo body, as README shows it. */
const dressPicture = (): string => overview(drafted('dress', shippedBody('leading-lady')));

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
