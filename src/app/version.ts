/** Version of the product, printed in reviews and results. A test keeps it equal to the package's. */
export const version = '0.2.0';
