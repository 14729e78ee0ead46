/** A weigh-up reckoned through: its balance, how sure that is, each cut and measure against its reference, and the words for it. Pure: no files, no SQL, no HTTP. */
package ribmark.weighup;
