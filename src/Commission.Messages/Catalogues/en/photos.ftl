### Why a file that was named as a photo is none that is read here.

# $file (text) - the file
empty = "{ $file }" is empty.
copy-next = Copy the photo from the camera again.
copy-again-next = Copy it from the camera again: a copy was broken off or changed.

# $file (text) - the file
text = "{ $file }" is text, not a picture.
text-next = Name the photo itself, a JPEG or PNG file.

# $file (text) - the file
unknown = "{ $file }" is no picture that is read here.
unknown-next = Photos are JPEG or PNG files: name one, or convert this file into one.

# $file (text) - the file
truncated = "{ $file }" ends before its picture does.

# $file (text) - the file
damaged = "{ $file }" is damaged: its picture cannot be decoded to the end.

# $file (text) - the file
rare = "{ $file }" is a JPEG of a rare kind (lossless or of more than 8 bits).

# $file (text) - the file
many-passes = "{ $file }" is a JPEG in far more passes than a camera writes.
save-again-next = Save it again as an ordinary JPEG.

# $file (text) - the file
# $size (name) - width and height in pixels
# $most (count) - millions of pixels that are read
too-many-pixels = "{ $file }" has { $size } pixels; at most { $most } million are read of such a file.
too-many-pixels-next = Save it with fewer pixels; 2000 × 1500 show everything.

# $file (text) - the file
# $format (choice: gif, bmp, tiff, webp, jpeg-xl, jpeg2000, layered, pdf, archive, svg, video, heic, avif, raw) - what it is
foreign =
    { $format ->
        [gif] "{ $file }" is a GIF picture, which is not read here.
        [bmp] "{ $file }" is a BMP picture, which is not read here.
        [tiff] "{ $file }" is a TIFF picture or a camera's raw file, which is not read here.
        [webp] "{ $file }" is a WebP picture, which is not read here.
        [jpeg-xl] "{ $file }" is a JPEG XL picture, which is not read here.
        [jpeg2000] "{ $file }" is a JPEG 2000 picture, which is not read here.
        [layered] "{ $file }" is a layered picture (PSD), which is not read here.
        [pdf] "{ $file }" is a PDF document, which is not read here.
        [archive] "{ $file }" is a ZIP archive or an office document, which is not read here.
        [svg] "{ $file }" is an SVG drawing, which is not read here.
        [heic] "{ $file }" is a HEIC picture, as many phones write them, which is not read here.
        [avif] "{ $file }" is an AVIF picture, which is not read here.
        [raw] "{ $file }" is a camera's raw file, which is not read here.
       *[video] "{ $file }" is a video, which is not read here.
    }
foreign-next = Take photos as JPEG (a setting of the camera), or convert this file to JPEG or PNG and name the new one.
