/** Codes of what is wrong with a command line, or with a file that is named on it. */
export const commandCodes = {
  'unknown-command': 'There is no such command. Take the one suggested, or see “bodkin help”.',
  'unknown-option': 'The command has no such option. Take the one suggested, or see “bodkin help COMMAND”.',
  'option-missing': 'The command cannot do without this option. Add it.',
  'option-without-value': 'The option needs a word after it. Add it.',
  'value-unusable': 'The command cannot take this value. Give one of the kind it names.',
  'options-conflict': 'Two options exclude each other. Leave one out.',
  'argument-missing': 'The command does not know what it is about. Name it, as “bodkin help COMMAND” shows.',
  'too-many-arguments': 'There is a word too many. Leave it out, or put words with blanks in quotes.',
  'unknown-garment': 'There is no garment of this name. Take the one suggested, or see “bodkin list”.',
  'unknown-code': 'No issue has this code. Take the one suggested, or see “bodkin explain”.',
  'unknown-step': 'No step of the construction bears this title. Take the one suggested, or see --steps.',
  'unknown-paper': 'There is no such paper. Take one of those named.',
  'roll-width': 'No roll is so narrow or so wide. Measure yours.',
  'tiles-apart':
    'The tiles of a printed pattern do not meet where they should. Do not print; this is a fault of the program.',
  'line-cut-off':
    'A line of a printed pattern does not show whole on its tiles. Do not print; this is a fault of the program.',
  'paper-too-small':
    'The pieces do not fit on this paper, however many sheets are joined. Take larger sheets.',
  'garment-missing': 'The command does not know which garment. Name one, or a sheet with --file.',
  'garment-needed': 'Say which garment the measurements are for, such as --garment dress.',
  'body-missing': 'The command does not know for whom. Say --body FILE, or --bodies FILE.',
  'sensitivity-not-asked':
    'A garment and its styling matter only with --sensitivity. Add it, or leave them out.',
  'no-earlier-draft': 'The folder holds no earlier draft. Name one with a sheet.svg or a report.json in it.',
  'not-of-that-draft':
    'A file beside the earlier draft is of another one, or cannot be read. Compare without it, or put it right.',
  'no-outlines': 'An earlier report holds no lines. Name the sheet.svg, or lay it beside its report.',
  'before-not-drafted': 'With --file nothing is drafted. Name an earlier sheet.svg or report.json.',
  'report-damaged': 'The report is not as it was written. Put right what is named, or draft again.',
  'report-empty': 'The report is of a draft that could not be made. Name another.',
  'not-worn-yet':
    'A piece crosses no level of the body whose finished girth the garment states, so nobody knows where it goes. State that girth in the draft.',
  'unknown-cloth': 'No cloth of this name ships. Take the one suggested, or name a file of its figures.',
  'no-cloth': 'The file holds no figures of a cloth. Write each on a line, as cli/wear.md shows.',
  'cloth-figure-missing': 'A figure of the cloth is missing. Write it, in the unit that is named.',
  'cloth-figure-unusable':
    'A figure of the cloth is no number, or none that a woven cloth can have. See its unit.',
  'cloth-field-unknown': 'The file of a cloth has a field that no cloth has. Take the one suggested.',
  'worn-of-another':
    'What was worn is of another garment or another body. Wear this one, or name its folder.',
  'fitting-over-input':
    'A fitting that is proposed is written into a file of its own, never over what was read. Name another file.',
  'no-sewing-order': 'There is no sewing order for this garment. Sew it as its own draft says.',
  'date-too-long': 'A date on a label has at most 40 letters. Shorten it.',
  'draft-missing': 'After --draft stands the file that holds the draft. Name it.',
  'draft-not-loaded': 'The file of the draft cannot be run. Put right what is named.',
  'no-draft': 'The file exports no draft. Write “export default defineDraft(…)”.',
  'page-not-built': 'The page that “bodkin open” serves is not there. Build it: npm run page.',
  'cannot-listen': 'Nothing can be served on that port. Name another with --port.',
  'cannot-read': 'A file cannot be read. See that its name is right, and that you may read it.',
  'cannot-write': 'Nothing can be written there. See that there is room, and that you may.',
  'file-too-large': 'The file is larger than anything of its kind. See that it is the right one.',
  'file-knotty':
    'The file is no set of measurements or choices: it is too long, or nested too deep. Write it plainly.',
  'not-yaml': 'The file is neither YAML nor JSON. Put right the line that is named.',
  'yaml-slip': 'A line of the file does not say what it looks like. Write it as is proposed.',
  'not-json': 'A line of the file is no JSON. Write one whole body on each line.',
  'line-not-text':
    'A line of a file holds bytes that are no text in UTF-8, so a name would be spelled wrong. Save the file with that encoding.',
  'line-too-long':
    'A line of the file is longer than any set of measurements. See that it is the right file.',
  'id-too-long': 'The id of a body is too long. Call it by something shorter.',
  'said-twice': 'A line says one thing twice. Leave one of the two.',
  'program-fault':
    'The program itself failed; the input is not to blame. Run again with BODKIN_DEBUG=1, and report what it prints.',
} as const;
