/** The file `firm.yaml` that a firm starts from: every field, none in force until its sign is taken away. */
export const starterFirm = `# Style of a firm. Everything here is optional: take the # away from what you want.
format: pipeborne-firm/1

# letterhead:
#   name: Tarn & Weir, piping engineers
#   address:
#     - 12 Quarry Lane, Larkfield
#   logo: logo.svg            # PNG, JPEG or SVG in this folder
#   logo-text: A hill behind a lake

# Headings in your words; the numbers stay.
# headings:
#   support-loads: What hangs on each support

# Printed behind the cautions that stand in every review.
# cautions:
#   - Report to the site office before any work.

# Which sections a reader gets, and in which order. A section of your own is a
# template in sections/, named here. Readers not named keep the shipped order.
# outline:
#   contractor: [summary, picture, support-loads, findings, assumptions, cautions]
`;
