import type { CommandWords, LineWords, OptionWords, Value } from './line-words.ts';

/** A script for fish: `bodkin completion fish | source`. */
export const fishScript = ({ commands, garments }: LineWords): string => `# fish completion of bodkin
function __bodkin_choices
    set -l line (commandline -opc)
    for word in $line[2..]
        switch $word
${garments.map(({ name, names, settings }) => `            case ${name}\n                printf '%s\\n' ${listed(settingsOf(names, settings))}\n                return`).join('\n')}
        end
    end
    printf '%s\\n' ${listed([...new Set(garments.flatMap(({ names, settings }) => settingsOf(names, settings)))])}
end
complete -c bodkin -f
${commands.map(({ name, says }) => `complete -c bodkin -n __fish_use_subcommand -a ${name} -d ${quoted(says)}`).join('\n')}
complete -c bodkin -n __fish_use_subcommand -l version -d 'print the version'
complete -c bodkin -l draft -r -F -d 'take in a garment drafted in a file of your own'
${commands.map(commandLines(garments.map(({ name }) => name))).join('\n')}
`;

/** The names of choices, each waiting for its value, and the values that are words. */
const settingsOf = (names: readonly string[], settings: readonly string[]): readonly string[] => [
  ...names.map((name) => `${name}=`),
  ...settings,
];

const commandLines =
  (garments: readonly string[]) =>
  ({ name, about, options }: CommandWords): string => {
    const here = `complete -c bodkin -n '__fish_seen_subcommand_from ${name}'`;
    return [
      ...(about ? [`${here} ${answer(about, garments)}`] : []),
      ...options.map(
        ({ flag, says, takes }: OptionWords) =>
          `${here} -l ${flag.replace(/^--/, '')}${takes ? ` -r ${answer(takes, garments)}` : ''} -d ${quoted(says)}`,
      ),
    ].join('\n');
  };

/** What follows, as `complete` is told. */
function answer(value: Value, garments: readonly string[]): string {
  switch (value.kind) {
    case 'words':
      return `-f -a ${quoted(value.words.join(' '))}`;
    case 'garment':
      return `-f -a ${quoted(garments.join(' '))}`;
    case 'choice':
      return "-f -a '(__bodkin_choices)'";
    case 'file':
      return '-F';
    case 'folder':
      return "-f -a '(__fish_complete_directories)'";
    case 'anything':
      return '-f';
  }
}

const listed = (words: readonly string[]): string => words.map(quoted).join(' ');

/** A word that fish takes as it is. */
const quoted = (word: string): string => `'${word.replace(/['\\]/g, '\\$&')}'`;
