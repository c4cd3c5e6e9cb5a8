/** Reads tables of text (CSV, TSV) as spreadsheets of many countries write them. */
@NullMarked
package weekwright.desk.intake.table;

import org.jspecify.annotations.NullMarked;
