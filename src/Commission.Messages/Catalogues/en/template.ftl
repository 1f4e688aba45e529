### What is wrong with a template of the user's own, or with the markup it wrote.

# $nearest (name) - what may be meant
did-you-mean = Did you mean { $nearest }?

# $names (list) - what there is
there-are = There are { $names }.

# $member (text) - the member
no-member = The record has no member "{ $member }" here.

# $name (text) - the template
no-template = There is no template "{ $name }".

# $fault (text) - what the catalogue says
no-words = A text cannot be made: { $fault }
no-words-next = Name a message of the catalogue of the pages, with the values its comment declares.

# $fault (text) - what the template engine says
cannot-run = The template cannot be carried out: { $fault }.

# $fault (text) - what the template engine says
not-liquid = The template is not good Liquid: { $fault }.

# $tag (name) - a tag
# $value (name) - a value in braces
not-liquid-next = Every { $tag } is closed by its end and every { $value } by two braces.

nested-too-deep = Elements stand inside each other more than 60 deep.
nested-too-deep-next = Close the elements that are still open.

# $near (text) - what stands there
not-xml = What the template wrote is not well-formed XML, soon after this line: { $near }
not-xml-expected = Every element is closed in the order it was opened, and & is written &amp;.
not-xml-next = Look at the elements of this line and the one after it.

# $element (name) - the element
wrong-root = The outermost element is { $element }.
wrong-root-expected = It must be <body>.
wrong-root-next = Put one <body> around everything.

# $target (text) - where the link goes
dead-link = A link goes to "{ $target }", which is nowhere.
dead-link-expected = A link goes to # and the id of an element of the document.
dead-link-next = Correct the href or give the element that id.

# $element (name) - the element
# $text (text) - the text
stray-text = Text stands directly in { $element }: "{ $text }".

# $element (name) - the element
stray-text-next = Put it into a <p> or another element that { $element } may hold.

# $child (name) - the element inside
# $element (name) - the element
wrong-child = { $child } stands directly in { $element }.

# $element (name) - the element
# $children (list) - what it may hold
may-hold = { $element } may hold { $children }.

# $element (name) - the element
may-hold-nothing = { $element } may hold nothing.

# $element (name) - the element
no-element = { $element } is not an element of the markup.
no-element-next = templates/README.md lists the elements.

# $element (name) - the element
# $attribute (name) - the attribute
no-attribute = { $element } has no attribute "{ $attribute }".

# $id (text) - the id
id-twice = The id "{ $id }" is used twice.
id-twice-next = Give every element its own id.

pageref-outside = <pageref> stands outside the first page.
pageref-outside-expected = The number of a page is known to the section of class one-page only, which is set last.

# $link (name) - an element
pageref-outside-next = Use { $link } here.

one-page-not-first = A section of class one-page is not the first thing of the document.
one-page-not-first-expected = Only the first page is fitted.
one-page-not-first-next = Put it first in <body>.

# $figure (text) - the figure
no-figure = The record has no figure "{ $figure }".
no-figure-next = Draw figures in a loop over the record's figures, or test whether there is one.

# $photo (text) - the photo
no-photo = There is no photo "{ $photo }".
no-photo-next = Show photos in a loop over the record's photos that are shown.

# $element (name) - the element
# $attribute (name) - the attribute
lacks = { $element } lacks { $attribute }.

# $element (name) - the element
# $first (name) - an attribute
# $second (name) - an attribute
lacks-one = { $element } lacks { $first } or { $second }.
photo-alt = It needs the words for people who do not see it.
sign-needs = It needs the name of its signature field and the words for people who do not see the line.
qr-needs = It needs the text to encode and the text for people who do not see it.
bar-needs = It needs the place of the value on the scale of its limit.

# $field (text) - the field
field-twice = The signature field "{ $field }" stands twice.
field-twice-next = Give every <sign> its own field.

# $length (count) - its length
qr-too-long =
    { $length ->
        [one] The text of a <qr> is one byte long.
       *[other] The text of a <qr> is { $length } bytes long.
    }

# $most (count) - the most that can be read
qr-too-long-expected = At most { $most } bytes can still be read from paper.
qr-too-long-next = Shorten it, for example with the filter truncate.

# $attribute (name) - the attribute
# $value (text) - its value
attribute-is = { $attribute } is "{ $value }".
whole-number = It must be a whole number from 1 to 99.

# $least (count) - the least
points-from = It must be points from { $least } to 400.
place-on-scale = It must be a number, 0 at the lower and 1 at the upper limit.
width = It must be per cent such as 12% or points such as 60.
