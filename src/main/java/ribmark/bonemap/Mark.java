package ribmark.bonemap;

/** One kind of mark on a picture and what it means: the words that stand beside the picture. */
record Mark(String mark, String meaning) {}
