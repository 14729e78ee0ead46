/** The chained log behind every mark and signature, its proofs, and the check that nobody altered it. It does not know what the records mean. */
package ribmark.evidence;
