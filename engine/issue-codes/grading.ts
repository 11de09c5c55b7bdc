/** Codes of size charts, and of what comes out when all their sizes are drafted. */
export const gradingCodes = {
  'chart-without-sizes': 'The chart has no sizes. Write a row of measurements for each, or a base and steps.',
  'chart-too-large': 'The chart has more sizes than any stock, cups counted. Grade it in parts.',
  'unknown-chart-field': 'A chart has no such field. Take the one suggested.',
  'unknown-column': 'A column is called after a measurement or a styling choice. Take the name suggested.',
  'column-twice': 'Two columns of the table have one name. Leave one of them out.',
  'not-a-table': 'The file is no table. Put right the line that is named.',
  'units-said-twice':
    'The chart says its unit itself, and not the one on the command line. Leave --units out.',
  'size-not-understood':
    'A size stands there by its name alone. Write its measurements, or a base and steps for all.',
  'size-unnamed': 'A size has no name. Give it one.',
  'size-twice': 'Two sizes have one name. Call one of them otherwise.',
  'base-missing':
    'There are steps, and no base to take them from. Write the measurements of one size under “base”.',
  'base-not-a-size': 'The base is none of the sizes. Say which one it is.',
  'steps-not-understood': 'Steps are the differences from size to size. Write them by measurement.',
  'steps-leave-out': 'A step of the run is said nowhere. Let the stretches meet.',
  'steps-overlap': 'A step of the run is said more than once. Let the stretches only meet.',
  'step-not-a-number': 'A step is a difference from one size to the next. Write it as a number.',
  'step-without-base': 'There are steps of something that the base has no number for. Add it to the base.',
  'cup-twice': 'A cup is named twice. Leave one out.',
  'unknown-cups-at': 'While the cup changes, the bust or the under-bust girth stays. Say which.',
  'body-not-read': 'A size names a file that holds no measurements. Name one that does.',
  'blend-not-understood': 'A blend names the size that each measurement comes from. Write it so.',
  'blend-of-unknown-size': 'A blend takes from a size that the run has not. Take one of those named.',
  'unknown-size':
    'The chart has no size of this name. Take one of those named, with its cup where it has several.',
  'unknown-alignment': 'No piece has a place of this name to be laid on. Take one of those named.',
  'piece-not-in-all-sizes':
    'Only some sizes have this piece. Choose the styling so that all have it, or none.',
  'edge-not-in-all-sizes':
    'The edges of a piece are not the same in all sizes. Choose the styling alike for all.',
  'edge-changes-kind':
    'An edge is sewn, folded or curved otherwise from one size on. Look at both sizes before they are sold as one pattern.',
  'notch-not-in-all-sizes':
    'Only some sizes have this notch. Look at both before they are sold as one pattern.',
  'notches-change-order':
    'Two notches pass each other from one size to the next. Look at both before they are sold as one pattern.',
  'uneven-grade':
    'A step from size to size changes though the chart’s does not. Read the cause: give the chart the measurement, or leave it; the size is true.',
} as const;
