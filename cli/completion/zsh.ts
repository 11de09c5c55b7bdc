import type { CommandWords, LineWords, Value } from './line-words.ts';

/** A script for zsh: `eval "$(bodkin completion zsh)"`, or a file `_bodkin` on its `fpath`. */
export const zshScript = ({ commands, garments }: LineWords): string => `#compdef bodkin
_bodkin_choices() {
  local -a names settings
  case $garment in
${garments.map(({ name, names, settings }) => `    ${name}) names=(${listed(names)}) settings=(${listed(settings)}) ;;`).join('\n')}
    *) names=(${listed(unique(garments.flatMap(({ names }) => names)))}) settings=(${listed(unique(garments.flatMap(({ settings }) => settings)))}) ;;
  esac
  if [[ $PREFIX == *=* ]]; then compadd -a settings; else compadd -S = -a names; fi
}
_bodkin() {
  local garment='' word before=\${words[CURRENT-1]}
  local -a known
  if (( CURRENT == 2 )); then
    known=(${commands.map(({ name, says }) => described(name, says)).join(' ')})
    _describe command known
    compadd -- --help --version --draft
    return
  fi
  for word in "\${words[@]:2}"; do
    case $word in (${garments.map(({ name }) => name).join('|')}) garment=$word ;; esac
  done
  case \${words[2]} in
${commands.map(commandCase(garments.map(({ name }) => name))).join('\n')}
  esac
}
if [[ $funcstack[1] == _bodkin ]]; then _bodkin "$@"; else compdef _bodkin bodkin; fi
`;

const commandCase =
  (garments: readonly string[]) =>
  ({ name, about, options }: CommandWords): string => {
    const valued = options.flatMap(({ flag, takes }) =>
      takes ? [`      (${flag}) ${answer(takes, garments)} ;;`] : [],
    );
    const flags = options.map(({ flag, says }) => described(flag, says)).join(' ');
    return `    (${name}) case $before in
${valued.join('\n')}
      (*) if [[ $PREFIX == -* ]]; then known=(${flags}); _describe option known; else ${about ? answer(about, garments) : ':'}; fi ;;
    esac ;;`;
  };

/** The command that answers with what a value may be. */
function answer(value: Value, garments: readonly string[]): string {
  switch (value.kind) {
    case 'words':
      return `compadd -- ${listed(value.words)}`;
    case 'garment':
      return `compadd -- ${listed(garments)}`;
    case 'choice':
      return '_bodkin_choices';
    case 'file':
      return '_files';
    case 'folder':
      return '_files -/';
    case 'anything':
      return ':';
  }
}

const unique = (words: readonly string[]): readonly string[] => [...new Set(words)];

const listed = (words: readonly string[]): string => words.map(quoted).join(' ');

const described = (word: string, says: string): string => quoted(`${word}:${says}`);

/** A word that zsh takes as it is. */
const quoted = (word: string): string => `'${word.replaceAll("'", "'\\''")}'`;
