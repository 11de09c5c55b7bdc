/** Codes of the checks on a drafted garment: walked, trued, closed, measured, cut and accounted for. */
export const patternCodes = {
  'seam-does-not-walk':
    'The two sides of a seam are not equally long. Do not cut; look at the stretch between notches that is named.',
  'join-not-true': 'A line has a corner where it crosses a sewn seam. True it over the seam before you cut.',
  'edges-do-not-meet':
    'A corner is asked for between edges that are no neighbours. Name two that follow one another.',
  'girth-does-not-close':
    'The pieces do not measure body plus ease around her. Do not cut; the draft, or the sheet, is wrong there.',
  'girth-miscounted': 'A girth does not count its pieces as often as they are cut. Count each as it is cut.',
  'girth-of-another':
    'A girth is for another figure than the sheet gives for her. One of the two was changed: write the sheet again.',
  'line-unjoined':
    'A line goes on over a seam, a fold or a corner, and no join says how. Add one; where it turns by design, say that it turns.',
  'turns-overclaimed':
    'An edge may turn oftener than any edge needs, so it is held to nothing. Say how often it should turn.',
  'level-uncounted':
    'A level line belongs to a girth that does not count it. Count it in, or take its girth away.',
  'shape-not-true': 'What a cutter looks at lies outside its bound. Do not cut; the reason stands beside it.',
  'shape-unclaimed':
    'The sheet is not held to a shape that such a garment is. Its claims are not as they were written: write it again.',
  'claim-left-out':
    'The sheet leaves out a seam, notch or other thing that such a garment has. Its claims are not as they were written: write it again.',
  'claim-otherwise':
    'The sheet claims something else than its draft does for the same body and choices. Write it again, or name its draft with --draft.',
  'shapes-unknown':
    'Which shapes and seams such a garment must have is not known here. Add its draft with --draft to have them looked for.',
  'shape-not-found': 'A shape is measured by a part that is not there. Name parts that are.',
  'broken-curve': 'An edge has a gap, a point in its middle, or no length. Draw it in one smooth go.',
  'kink-in-edge': 'An edge has a kink where it should run smoothly. Smooth it, or make two edges of it.',
  'stray-inflection':
    'An edge turns between hollow and round more often than it should. Draw it again with fewer turns.',
  'outline-open': 'The stitching line does not close. Bring the two ends together.',
  'outline-anticlockwise': 'The outline runs the wrong way round, its allowance inside. Draw it clockwise.',
  'outline-crosses': 'The outline crosses or touches itself. Draw it apart there, or alter it by less.',
  'grainline-outside': 'The grainline does not lie in its piece. Move it inside.',
  'allowance-impossible': 'An allowance is less than nothing, or no number. Give one that can be cut.',
  'allowance-on-fold': 'An edge on a fold of the cloth takes no allowance. Give it none.',
  'allowance-not-kept':
    'The cutting line is not one allowance away everywhere. Draw it again from the stitching line.',
  'allowances-not-flush':
    'Allowances of sewn neighbours do not end together. Step the wide one at the corner.',
  'cutting-line-missing': 'A piece has no cutting line. Write the pattern again.',
  'cutting-line-open': 'A cutting line does not close. Write the pattern again.',
  'cutting-line-anticlockwise': 'A cutting line runs the wrong way round. Write the pattern again.',
  'cutting-line-crosses':
    'A cutting line crosses itself. Make the allowance narrower there, or the hollow it lies in wider.',
  'cutting-line-moved':
    'A cutting line lies aside of where stitching line and allowances put it. Write the pattern again.',
  'hem-lies-not-flat':
    'Turned up, the hem is wider or narrower than the cloth it lies on. Choose a narrower hem.',
  'dart-leg-alone': 'A leg of a dart has no other leg beside it. Draw both, one after the other.',
  'dart-legs-differ':
    'The legs of a dart are not equally long. Ease the longer one in, or true the edge over the shut dart.',
  'dart-not-flush':
    'Folded shut, the dart does not end with the edge it is pressed over. Draw its cap again with the dart shut.',
  'notch-without-partner': 'A notch has none to meet on the edge sewn to it. Set one there, or take it away.',
  'notch-off-edge': 'A notch stands beyond the end of its edge. Set it within.',
  'notch-twice': 'Two notches of one seam have the same name. Give each its own.',
  'notch-partners-differ': 'One notch is drawn in two ways on the two pieces. Draw both alike.',
  'notch-double-at-front': 'A double notch stands in front. Double notches are for the back: make it single.',
  'notch-single-at-back': 'A single notch stands behind. Single notches are for the front: make it double.',
  'notch-too-deep': 'A notch is cut too far into its allowance. Cut 4 mm, and never over half the allowance.',
  'fold-without-notch': 'Nothing shows where the cloth is folded. Notch the fold at one end at least.',
  'edge-unsewn':
    'An edge has an allowance and nothing sews it. Sew it, hem it, finish it, or leave it open by name.',
  'cut-beyond-fold': 'A cutting line goes on beyond a fold. Do not cut; end it on the fold.',
  'cut-cannot-be': 'A piece cannot be cut so often, or not so on the fold. Put right how it is cut.',
  'piece-misnumbered': 'The pieces are not numbered one after the other. Number them from 1.',
  'pieces-overlap': 'Two pieces lie on each other on the paper. Write the sheet again.',
  'label-over-line': 'A label hides a line of its piece. Write the sheet again, or shorten the words.',
  'name-used-twice': 'Two parts have one name, so no seam can tell them apart. Give each its own.',
  'no-such-piece': 'A piece is named that is not there. Take the name of one that is.',
  'no-such-edge': 'An edge is named that is not there. Take the name of one that is.',
  'no-such-line': 'A line inside a piece is named that is not there. Take the name of one that is.',
} as const;
