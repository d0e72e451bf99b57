//! Writes the Kotlin and Swift bindings of the core.
fn main() {
    uniffi::uniffi_bindgen_main()
}
