package rigmorrow.app.labels;

import com.google.zxing.BarcodeFormat;

/**
 * Bar codes that are printed. Quiet zones and widths are those of the GS1 General Specifications,
 * section 5, for EAN, UPC and ITF-14, and of ISO/IEC 15417 and 18004 for Code 128 and QR code (from
 * memory).
 */
enum Symbology {
  EAN_13("EAN-13", BarcodeFormat.EAN_13, 11, 7, 0.33, 0.264),
  EAN_8("EAN-8", BarcodeFormat.EAN_8, 7, 7, 0.33, 0.264),
  UPC_A("UPC-A", BarcodeFormat.UPC_A, 9, 9, 0.33, 0.264),
  ITF_14("ITF-14", BarcodeFormat.ITF, 10, 10, 0.495, 0.25),
  CODE_128("Code 128", BarcodeFormat.CODE_128, 10, 10, 0.33, 0.25),
  QR("QR code", BarcodeFormat.QR_CODE, 4, 4, 0.6, 0.33);

  private final String label;
  private final BarcodeFormat format;
  private final int quietLeft;
  private final int quietRight;
  private final double usualModuleMm;
  private final double leastModuleMm;

  Symbology(
      String label,
      BarcodeFormat format,
      int quietLeft,
      int quietRight,
      double usualModuleMm,
      double leastModuleMm) {
    this.label = label;
    this.format = format;
    this.quietLeft = quietLeft;
    this.quietRight = quietRight;
    this.usualModuleMm = usualModuleMm;
    this.leastModuleMm = leastModuleMm;
  }

  /** The bar code for a trade item number of 8, 12, 13 or 14 digits. */
  static Symbology ofGtin(String gtin) {
    return switch (gtin.length()) {
      case 8 -> EAN_8;
      case 12 -> UPC_A;
      case 14 -> ITF_14;
      default -> EAN_13;
    };
  }

  String label() {
    return label;
  }

  BarcodeFormat format() {
    return format;
  }

  /** Modules that stay white before the first bar; above and below too for a square code. */
  int quietLeft() {
    return quietLeft;
  }

  /** Modules that stay white behind the last bar. */
  int quietRight() {
    return quietRight;
  }

  /** Width of the narrowest bar where there is room. */
  double usualModuleMm() {
    return usualModuleMm;
  }

  /** Width of the narrowest bar below which a scanner may fail. */
  double leastModuleMm() {
    return leastModuleMm;
  }

  boolean square() {
    return this == QR;
  }
}
