import type { CommandWords, LineWords, Value } from './line-words.ts';

/** A script for bash, from 3.2 on: `eval "$(bodkin completion bash)"`. */
export const bashScript = ({ commands, garments }: LineWords): string => `# bash completion of bodkin
_bodkin_words() { COMPREPLY=($(compgen -W "$1" -- "$cur")); }
_bodkin_files() {
  local IFS=$'\\n'
  COMPREPLY=($(compgen "$1" -- "$cur"))
  compopt -o filenames 2>/dev/null
}
_bodkin_choices() {
  local names settings
  case $garment in
${garments.map(({ name, names, settings }) => `    ${name}) names='${listed(names, '=')}' settings='${listed(settings)}' ;;`).join('\n')}
    *) names='${listed(unique(garments.flatMap(({ names }) => names)), '=')}' settings='${listed(unique(garments.flatMap(({ settings }) => settings)))}' ;;
  esac
  case $cur in
    *=*) _bodkin_words "$settings" ;;
    *) _bodkin_words "$names"; compopt -o nospace 2>/dev/null ;;
  esac
}
_bodkin() {
  # Bash breaks words at "=" and ":"; the line is read anew, and what it has broken off is taken off the answers.
  local line=\${COMP_LINE:0:COMP_POINT} words cur before garment='' word broken
  read -ra words <<< "$line"
  case $line in *[[:space:]]) words+=('') ;; esac
  cur=\${words[\${#words[@]} - 1]}
  before=\${words[\${#words[@]} - 2]}
  COMPREPLY=()
  if [ \${#words[@]} -le 2 ]; then
    _bodkin_words '${listed(commands.map(({ name }) => name))} --help --version --draft'
    return
  fi
  for word in "\${words[@]:2}"; do
    case $word in ${garments.map(({ name }) => name).join('|')}) garment=$word ;; esac
  done
  case \${words[1]} in
${commands.map(commandCase(garments.map(({ name }) => name))).join('\n')}
  esac
  broken=\${cur%"\${cur##*[=:]}"}
  COMPREPLY=("\${COMPREPLY[@]#"$broken"}")
}
complete -F _bodkin bodkin
`;

const commandCase =
  (garments: readonly string[]) =>
  ({ name, about, options }: CommandWords): string => {
    const valued = options.flatMap(({ flag, takes }) =>
      takes ? [`      ${flag}) ${answer(takes, garments)} ;;`] : [],
    );
    const flags = listed(options.map(({ flag }) => flag));
    return `  ${name}) case $before in
${[...valued, `      *) case $cur in -*) _bodkin_words '${flags}' ;; *) ${about ? answer(about, garments) : ':'} ;; esac ;;`].join('\n')}
    esac ;;`;
  };

/** The command that answers with what a value may be. */
function answer(value: Value, garments: readonly string[]): string {
  switch (value.kind) {
    case 'words':
      return `_bodkin_words '${listed(value.words)}'`;
    case 'garment':
      return `_bodkin_words '${listed(garments)}'`;
    case 'choice':
      return '_bodkin_choices';
    case 'file':
      return '_bodkin_files -f';
    case 'folder':
      return '_bodkin_files -d';
    case 'anything':
      return ':';
  }
}

const unique = (words: readonly string[]): readonly string[] => [...new Set(words)];

/** Words in one list; a value that has a blank in it cannot stand in one, and is typed by hand. */
const listed = (words: readonly string[], end = ''): string =>
  words
    .filter((word) => /^[\w:=.-]+$/.test(word))
    .map((word) => `${word}${end}`)
    .join(' ');
