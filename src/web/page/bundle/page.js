var So=globalThis,Po=So.ShadowRoot&&(So.ShadyCSS===void 0||So.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,wa=Symbol(),ba=new WeakMap,Ro=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==wa)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Po&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=ba.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&ba.set(n,t))}return t}toString(){return this.cssText}},ya=e=>new Ro(typeof e=="string"?e:e+"",void 0,wa);var va=(e,t)=>{if(Po)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=So.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Yi=Po?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return ya(n)})(e):e;var{is:Vd,defineProperty:Kd,getOwnPropertyDescriptor:Gd,getOwnPropertyNames:Yd,getOwnPropertySymbols:Qd,getPrototypeOf:Zd}=Object,Ao=globalThis,xa=Ao.trustedTypes,Xd=xa?xa.emptyScript:"",em=Ao.reactiveElementPolyfillSupport,Bn=(e,t)=>e,Qi={toAttribute(e,t){switch(t){case Boolean:e=e?Xd:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},Ta=(e,t)=>!Vd(e,t),ka={attribute:!0,type:String,converter:Qi,reflect:!1,useDefault:!1,hasChanged:Ta};Symbol.metadata??=Symbol("metadata"),Ao.litPropertyMetadata??=new WeakMap;var Ye=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=ka){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Kd(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=Gd(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let c=i?.call(this);r?.call(this,l),this.requestUpdate(t,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??ka}static _$Ei(){if(this.hasOwnProperty(Bn("elementProperties")))return;let t=Zd(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Bn("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Bn("properties"))){let n=this.properties,o=[...Yd(n),...Qd(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Yi(i))}else t!==void 0&&n.push(Yi(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return va(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Qi).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Qi;this._$Em=i;let c=l.fromAttribute(n,r.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??Ta)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,c=this[i];l!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,r,c)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};Ye.elementStyles=[],Ye.shadowRootOptions={mode:"open"},Ye[Bn("elementProperties")]=new Map,Ye[Bn("finalized")]=new Map,em?.({ReactiveElement:Ye}),(Ao.reactiveElementVersions??=[]).push("2.1.2");var Xi=globalThis,Sa=e=>e,Do=Xi.trustedTypes,Ra=Do?Do.createPolicy("lit-html",{createHTML:e=>e}):void 0,er="$lit$",Qe=`lit$${Math.random().toFixed(9).slice(2)}$`,tr="?"+Qe,tm=`<${tr}>`,Mt=document,jn=()=>Mt.createComment(""),Nn=e=>e===null||typeof e!="object"&&typeof e!="function",nr=Array.isArray,Fa=e=>nr(e)||typeof e?.[Symbol.iterator]=="function",Zi=`[ 	
\f\r]`,Wn=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Pa=/-->/g,Aa=/>/g,At=RegExp(`>|${Zi}(?:([^\\s"'>=/]+)(${Zi}*=${Zi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Da=/'/g,Ma=/"/g,La=/^(?:script|style|textarea|title)$/i,or=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=or(1),M=or(2),kb=or(3),ke=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Oa=new WeakMap,Dt=Mt.createTreeWalker(Mt,129);function Ea(e,t){if(!nr(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Ra!==void 0?Ra.createHTML(t):t}var Ca=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=Wn;for(let c=0;c<n;c++){let p=e[c],m,h,$=-1,k=0;for(;k<p.length&&(l.lastIndex=k,h=l.exec(p),h!==null);)k=l.lastIndex,l===Wn?h[1]==="!--"?l=Pa:h[1]!==void 0?l=Aa:h[2]!==void 0?(La.test(h[2])&&(i=RegExp("</"+h[2],"g")),l=At):h[3]!==void 0&&(l=At):l===At?h[0]===">"?(l=i??Wn,$=-1):h[1]===void 0?$=-2:($=l.lastIndex-h[2].length,m=h[1],l=h[3]===void 0?At:h[3]==='"'?Ma:Da):l===Ma||l===Da?l=At:l===Pa||l===Aa?l=Wn:(l=At,i=void 0);let A=l===At&&e[c+1].startsWith("/>")?" ":"";r+=l===Wn?p+tm:$>=0?(o.push(m),p.slice(0,$)+er+p.slice($)+Qe+A):p+Qe+($===-2?c:A)}return[Ea(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Un=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,c=t.length-1,p=this.parts,[m,h]=Ca(t,n);if(this.el=e.createElement(m,o),Dt.currentNode=this.el.content,n===2||n===3){let $=this.el.content.firstChild;$.replaceWith(...$.childNodes)}for(;(i=Dt.nextNode())!==null&&p.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let $ of i.getAttributeNames())if($.endsWith(er)){let k=h[l++],A=i.getAttribute($).split(Qe),F=/([.?@])?(.*)/.exec(k);p.push({type:1,index:r,name:F[2],strings:A,ctor:F[1]==="."?Oo:F[1]==="?"?Fo:F[1]==="@"?Lo:Ft}),i.removeAttribute($)}else $.startsWith(Qe)&&(p.push({type:6,index:r}),i.removeAttribute($));if(La.test(i.tagName)){let $=i.textContent.split(Qe),k=$.length-1;if(k>0){i.textContent=Do?Do.emptyScript:"";for(let A=0;A<k;A++)i.append($[A],jn()),Dt.nextNode(),p.push({type:2,index:++r});i.append($[k],jn())}}}else if(i.nodeType===8)if(i.data===tr)p.push({type:2,index:r});else{let $=-1;for(;($=i.data.indexOf(Qe,$+1))!==-1;)p.push({type:7,index:r}),$+=Qe.length-1}r++}}static createElement(t,n){let o=Mt.createElement("template");return o.innerHTML=t,o}};function Ot(e,t,n=e,o){if(t===ke)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Nn(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=Ot(e,i._$AS(e,t.values),i,o)),t}var Mo=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Mt).importNode(n,!0);Dt.currentNode=i;let r=Dt.nextNode(),l=0,c=0,p=o[0];for(;p!==void 0;){if(l===p.index){let m;p.type===2?m=new Xt(r,r.nextSibling,this,t):p.type===1?m=new p.ctor(r,p.name,p.strings,this,t):p.type===6&&(m=new Eo(r,this,t)),this._$AV.push(m),p=o[++c]}l!==p?.index&&(r=Dt.nextNode(),l++)}return Dt.currentNode=Mt,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Xt=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Ot(this,t,n),Nn(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==ke&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Fa(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&Nn(this._$AH)?this._$AA.nextSibling.data=t:this.T(Mt.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Un.createElement(Ea(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new Mo(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Oa.get(t.strings);return n===void 0&&Oa.set(t.strings,n=new Un(t)),n}k(t){nr(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(jn()),this.O(jn()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=Sa(t).nextSibling;Sa(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Ft=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=Ot(this,t,n,0),l=!Nn(t)||t!==this._$AH&&t!==ke,l&&(this._$AH=t);else{let c=t,p,m;for(t=r[0],p=0;p<r.length-1;p++)m=Ot(this,c[o+p],n,p),m===ke&&(m=this._$AH[p]),l||=!Nn(m)||m!==this._$AH[p],m===u?t=u:t!==u&&(t+=(m??"")+r[p+1]),this._$AH[p]=m}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Oo=class extends Ft{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},Fo=class extends Ft{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},Lo=class extends Ft{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=Ot(this,t,n,0)??u)===ke)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Eo=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){Ot(this,t)}},Ia={M:er,P:Qe,A:tr,C:1,L:Ca,R:Mo,D:Fa,V:Ot,I:Xt,H:Ft,N:Fo,U:Lo,B:Oo,F:Eo},nm=Xi.litHtmlPolyfillSupport;nm?.(Un,Xt),(Xi.litHtmlVersions??=[]).push("3.3.3");var We=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Xt(t.insertBefore(jn(),r),r,void 0,n??{})}return i._$AI(e),i};var ir=globalThis,en=class extends Ye{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=We(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return ke}};en._$litElement$=!0,en.finalized=!0,ir.litElementHydrateSupport?.({LitElement:en});var om=ir.litElementPolyfillSupport;om?.({LitElement:en});(ir.litElementVersions??=[]).push("4.2.2");var Ba=()=>{},rr=!1;function Wa(e){Ba=e}function Ae(){rr||(rr=!0,queueMicrotask(()=>{rr=!1,Ba()}))}function ja(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}function _(e,t){let n=e;for(let o of ja(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function W(e,t,n){return sr(e,ja(t),n)}function sr(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let c=[...e],p=sr(c[Number(o)],i,n);return p===void 0?c.splice(Number(o),1):c[Number(o)]=p,c}let r={...e??{}},l=sr(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Na={};function je(e,t){(Na[e]??=[]).push(t)}function ce(e,t){for(let n of Na[e]??[])n(t)}var ar=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],Co="";function Ua(e){Co=e,sessionStorage.setItem("key",e)}Ua(ar()??sessionStorage.getItem("key")??"");var Ha=()=>ar()!==void 0;function za(e){addEventListener("hashchange",()=>{let t=ar();if(!t)return;let n=t!==Co;Ua(t),e(n)})}var Ja={status:0,body:new Blob};async function im(e,t,n,o){try{let i=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":Co},signal:o});return{status:i.status,body:await i.blob()}}catch{return Ja}}function rm(e,t,n,o){return new Promise(i=>{let r=new XMLHttpRequest;r.open(e,t),r.setRequestHeader("X-Bench-Key",Co),r.responseType="blob",r.upload.onprogress=l=>o(l.total?l.loaded/l.total:0),r.onerror=()=>i(Ja),r.onload=()=>i({status:r.status,body:r.response}),r.send(n)})}var qa={send:(e,t,n,o,i)=>n!==void 0&&o?rm(e,t,n,o):im(e,t,n,i)};var sm=qa,fe=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),w=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},am={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},Va="what you typed is kept here";function lm(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${Va}`]:["internal error in brimwright (your files are not at fault)",`${Va}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function Ka(e,t){if(e===0)return new w(0,am);let n=lm(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new w(e,o,t)}async function um(e,t){try{return Ka(e,JSON.parse(await t.text()))}catch{return Ka(e,{})}}async function Ga(...e){let{status:t,body:n}=await sm.send(...e);if(t>=200&&t<300)return n;throw await um(t,n)}var Lt=async(...e)=>JSON.parse(await(await Ga(...e)).text()),Ne=(e,t)=>Lt("POST",e,JSON.stringify(t)),it=()=>Lt("GET","/api/files"),oe=e=>Lt("GET",`/api/file?file=${encodeURIComponent(e)}`),Io=e=>Lt("PUT","/api/file",JSON.stringify(e)),Ya=(e,t)=>Ne("/api/file/rename",{file:e,to:t}),lr=(e,t=!1)=>Ne("/api/file/remove",{file:e,even_so:t}),Qa=e=>Ne("/api/file/restore",{removed:e}),cm=12e3,pm=([e,t])=>`&${encodeURIComponent(`file:${e}`)}=${t??""}`;async function tn(e){let t={changed:{},unreadable:[]};for(let n of Za(e)){let{changed:o,unreadable:i}=await Lt("GET",`/api/changed?wait=0${n}`);Object.assign(t.changed,o),t.unreadable.push(...i)}return t}function Za(e){let t=[""];for(let n of[...e].map(pm))t.at(-1).length+n.length>cm?t.push(n):t[t.length-1]+=n;return t}var dm=crypto.randomUUID(),ur=2e4;async function Xa(e,t){let[n,...o]=Za(e);if(o.length)return tn(e);let i=`/api/changed?wait=${ur/1e3}&tab=${dm}${n}`;return Lt("GET",i,void 0,void 0,t)}var el=e=>Ne("/api/plan",e),tl=e=>Ne("/api/plan",{...e,explain:!0}),nl=e=>Ne("/api/gauge",{...e,inspect:!0}),Ue=e=>Ne("/api/gauge",e),cr=e=>Ne("/api/list",{what:e}),ol=async()=>(await cr("fats")).fats,il=async()=>(await cr("moulds")).moulds,rl=async()=>(await cr("tips")).tips,rt=e=>Ga("POST","/api/document",JSON.stringify(e)),sl=async e=>(await Ne("/api/document",{...e,open:!0})).address,al=(e,t)=>Lt("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),ll=async(e,t)=>(await Ne("/api/keep",{upload:e,as:t})).file;var te=["pour","pipe","apart"];var Q=e=>`${JSON.stringify(e,null,2)}
`;function V(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var Et=e=>e.slice(0,e.lastIndexOf("/")+1),Ct=e=>e.slice(e.lastIndexOf("/")+1),ul=(e,t)=>{let n=Et(e);return n?mm(n+t):t};function mm(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function st(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function nn(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var fm=["mould","formula","file","own_fats","own_tips"];function pr(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?pr(o,i):fm.includes(n)?[i]:[]})}function dr(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...pr(e)])[n,o]=[W(n,i,void 0),W(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function mr(e,t){let n=["/id",...pr(e)].filter(o=>_(e,o)!==_(t,o));return o=>n.reduce((i,r)=>_(i,r)===_(e,r)?W(i,r,_(t,r)):i,o)}var C=(e,t)=>({name:e,label:t,unit:"mm"}),at=C("height","Floor to brim"),Bo={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},fr={block:{words:"Box, loaf or slab",measures:[C("length","Longer side at the brim"),C("width","Shorter side"),at,Bo,{...C("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),at]},fluted_cup:{words:"Fluted cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),at,{name:"flutes",label:"Flutes",unit:"",count:!0},C("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},C("across_flats","Across the flats"),at,Bo]},dome:{words:"Bowl",measures:[C("diameter","Across the brim"),at]},half_ball:{words:"Half ball",measures:[C("diameter","Across the brim")]},ball:{words:"Ball",measures:[C("diameter","Across")]},half_ring:{words:"Half ring",measures:[C("centre_diameter","Ring, middle to middle of the tube"),C("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[C("outer_floor_diameter","Cup, across the floor"),C("outer_brim_diameter","Cup, across the brim"),C("post_floor_diameter","Post, at its foot"),C("post_brim_diameter","Post, at its top"),at]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[C("height","Height"),C("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[at,Bo],points:{columns:[C("x","From the left"),C("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[C("side","Straight edge, tip to round"),at,Bo]}},cl=Object.fromEntries(Object.entries(fr).map(([e,{words:t}])=>[e,t])),on=e=>fr[e]?.measures??[],lt=e=>fr[e]?.points;var hr=(e,t)=>String(_(e,t)??"").trim(),Hn=e=>hr(e,"/shape/kind"),De=(e,t)=>_(e,`/${t}`)!==void 0,gr=e=>["body","skin"].includes(hr(e,"/mesh/role"));function he(e,t){let n=_(e,t);return Array.isArray(n)?n:[]}function pl(e,t){return(lt(Hn(e))?.columns??[]).map(({name:o})=>String(_(t,`/${o}`)??"").trim())}function zn(e){return he(e,"/shape/points").flatMap((t,n)=>pl(e,t).every(Boolean)?[n]:[])}function Wo(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return he(e,"/shape/points").flatMap((n,o)=>t(pl(e,n))?[o]:[])}var _r=e=>he(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function dl(e){let t=e,n=(o,i)=>{if(!Array.isArray(_(t,o)))return;let r=i.map(l=>_(e,`${o}/${l}`));t=W(t,o,r)};return lt(Hn(e))&&n("/shape/points",zn(e)),n("/water/weighings",_r(e)),t}function jo(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?zn(e):_r(e);return`${n}/${r[Number(o)]??o}${i}`}function Jn(e){let t=[],n=i=>hr(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(De(e,"shape")){let i=Hn(e);o(i!=="","the shape");for(let{name:l,label:c,optional:p}of on(i))o(p||n(`/shape/${l}`),c.toLowerCase());let r=lt(i);r&&o(zn(e).length>=r.least,`${r.least} points at least`)}if(De(e,"water")){o(n("/water/temperature"),"the water's temperature"),o(_(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(_(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(_r(e).length>0,"a weighing of water")}return!gr(e)&&!De(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var It={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?Ct(t):st(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},rn={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?Ct(t):st(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},Te={name:"mould",list:"moulds",new_name:({now:e})=>st(String(e.name),".json"),written:e=>({...dl(e),name:String(e.name??"").trim()}),is_begun:e=>De(e,"shape")||De(e,"mesh")};var ml={kind:It,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},He={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:ml,formulas:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},open:new Set,folded:new Set,units:hm(),announcement:""},a=He;function hm(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}function f(e){Object.assign(He,e),Ae()}var ie=e=>f({announcement:e});function b(e,t){Object.assign(e,t),Ae()}function Ze(e,t){let{[e]:n,...o}=He.formulas;f({formulas:t?{...o,[e]:t}:o})}function ut(e,t){let n=new Set(He[e]);n.delete(t)||n.add(t),f({[e]:n})}function No(e=ml){f({run:e,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0})}function $r(e){He.open.has(e)||f({open:new Set(He.open).add(e)})}function Uo(e,t,{name:n,note:o}={}){if(!He.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},r=He.files[e].filter(c=>c.file!==t),l=He.files[e].findIndex(c=>c.file===t);r.splice(l<0?r.length:l,0,i),f({files:{...He.files,[e]:r}})}async function ct({kind:e,name:t,text:n,from:o,about_to:i,is_own:r}){for(;;){let{runs:l=[],formulas:c=[],moulds:p=[]}=a.files??{},m=nn(t,[...l,...c,...p]);i?.(m);let h=await gm(m,n,o);if(Uo(e.list,m,V(h.there.text)??{name:m}),h.is_new||r?.(h.there))return h.there}}async function gm(e,t,n){try{return{is_new:!0,there:await Io({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof w)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var Ho=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Bt({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let c={id:t,file:n,version:o,shipped:i,text:Q(r),copy:l};localStorage.setItem(Ho(e)+t,JSON.stringify(c))}catch{}}function br(e,t){try{return JSON.parse(localStorage.getItem(Ho(e)+t)??"null")??void 0}catch{return}}var Wt=(e,t)=>localStorage.removeItem(Ho(e)+t);function zo(e){let t=Ho(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>br(e,o)??[])}var _m=300,j=e=>e.now!==e.saved;function qn(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function ze(e,t,n=t){let o=await oe(t),i=$m(e,JSON.parse(o.text),o.shipped),r=br(e,n),l=r?.copy&&o.shipped?await bm(e,r,i):void 0;if(l)return Wt(e,n),ze(e,l);let{version:c,shipped:p=!1}=o,m={kind:e,id:n,file:t,version:c,shipped:p,now:i,saved:i,unanswered:[]};return r&&wm(m,r,o),m}var $m=(e,t,n=!1)=>e.name==="run"&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function bm(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=V(t.text),i=V((await oe(t.copy)).text);if(!(!o||!i||Q(o)===Q(n)))return dr(e.written(o),i)?t.copy:void 0}function wm(e,t,n){let o=V(t.text);if(!o||Q(o)===Q(e.now))return Wt(e.kind,e.id);b(e,{now:o}),!(t.version===n.version||n.shipped)&&(b(e,{version:t.version}),vl(e,n))}function ge(e,t){let n=e.now;b(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Bt(e),ce("edited",{file:e,before:n})}var fl=new WeakMap,wr=async e=>fl.get(e),jt=e=>gl(e,()=>ym(e)),hl=e=>gl(e,()=>e.shipped?_l(e,$l):Promise.resolve());function gl(e,t){let n=wr(e).then(t);return fl.set(e,n.catch(()=>{})),n}async function ym(e){!j(e)||e.theirs||await _l(e,e.shipped||!e.file?$l:bl)}async function _l(e,t){b(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof w&&b(e,{failed:fe(n.complaint)}),n}}async function $l(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await ct({kind:t,name:t.new_name(e),text:Q(r),from:i,about_to:h=>Bt(e,h),is_own:({text:h})=>i!==void 0&&dr(r,V(h)??{})}),c=JSON.parse(l.text),p=mr(r,c),m=e.now===o?c:p(e.now);Wt(t,n),b(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:m,saved:c}),j(e)&&Bt(e),i!==void 0&&ce("copied",{file:e,from:i,renamed:p})}async function bl(e){let{version:t,now:n}=e,o=Q(e.kind.written(n));b(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Jo(e,n,(await Io({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;wl(e,i.answer),j(e)&&!e.theirs&&await bl(e)}}function Jo(e,t,n){b(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),j(e)?Bt(e):Wt(e.kind,e.id),Uo(e.kind.list,e.file,t)}function wl(e,{version:t,text:n}){if(n===Q(e.kind.written(e.now)))return Jo(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(b(e,{unanswered:[]}),o)return b(e,{version:t,saved:void 0,theirs:void 0});let i=j(e)||e.theirs?void 0:V(n);i?vm(e,i,t):vl(e,{version:t,text:n})}function vm(e,t,n){ce("giving_way",{file:e}),b(e,{set_aside:e.now,is_taken:!0,now:t}),Jo(e,t,n),ie(`${e.file} was changed outside this page, and stands here as it is now.`),ce("gave_way",{file:e})}var yl=e=>b(e,{set_aside:void 0,is_taken:void 0});function vl(e,{version:t,text:n}){b(e,{theirs:{version:t,text:n}}),Bt(e),ie(`${e.file} was changed outside this page. Which version do you want to keep?`),ce("conflict",{file:e})}function xl(e){if(!e.theirs)return;let t=V(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return b(e,{failed:n})}ce("giving_way",{file:e}),b(e,{set_aside:e.now,now:t}),Jo(e,t,e.theirs.version),ce("gave_way",{file:e})}function kl(e){e.theirs&&(b(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Bt(e),ce("unwritten",{file:e}))}function Tl(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;ge(e,t),b(e,{set_aside:o?void 0:n})}var Sl=e=>(e.theirs??e).version;function Rl(e,t){b(e,{id:t,file:t}),ce("renamed",{file:e,renamed:n=>n})}async function Pl(e){let{version:t,text:n}=await oe(e.file),o=V(n);if(!o||e.theirs||t===e.version)return;let i=mr(e.now,o);if(j(e))return b(e,{version:t,now:i(e.now),saved:o});b(e,{version:t,now:o,saved:o}),ce("renamed",{file:e,renamed:i})}var Al=e=>e.shipped||!e.file?[]:[[e.file,Sl(e)]];async function yr(e,t,n,o){let i=e.file,r=()=>Sl(e)===t&&e.file===i;if(!r()||(await wr(e),!r()))return!1;o(),await vr();let l=await xm(i,n);return await wr(e),r()&&(wl(e,l),j(e)&&!e.theirs&&ce("unwritten",{file:e})),!0}async function xm(e,t){let n=await t(e);return n===null?{version:n,text:null}:oe(e)}var vr=()=>new Promise(e=>setTimeout(e,_m));var km=300,Tm=1200,qo="",Dl=0;function Vn(){let e={run:{file:a.run,now:a.run.now}};for(let t of te){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}return e}function Nt(e=""){let t=performance.now();e&&e===qo&&t-Dl<=Tm&&a.past.length||xr(Vn()),f({future:[]}),qo=e,Dl=t}var xr=e=>f({past:[...a.past,e].slice(-km)});function Vo(e){xr(Ml(Vn(),e,()=>e.saved??{}))}function Ml(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function kr(e,t){let n=o=>o.map(i=>Ml(i,e,t));f({past:n(a.past),future:n(a.future)})}function Ko(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,Vn()]}),Fl(e,"Undone"))}function Ol(){let e=a.future.at(-1);e&&(f({past:[...a.past,Vn()],future:a.future.slice(0,-1)}),Fl(e,"Redone"))}function Fl(e,t){qo="",f({typed:void 0});for(let n of[...te,"run"])Sm(n,e);ie(t)}function Sm(e,t){let n=t[e],o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Ze(e,n.file),n.file.now!==n.now&&ge(n.file,n.now))}var Go=e=>e===a.run||te.some(t=>a.formulas[t]===e);je("giving_way",({file:e})=>{Go(e)&&(qo="",xr(Vn()),f({typed:void 0}))});for(let e of["copied","renamed"])je(e,({file:t,renamed:n})=>kr(t,n));var sn=e=>ul(a.run.file,e);function pt(e,t){let n=sn(e);return t?.some(o=>o.file===n)?n:e}async function dt(){for(let e of["pour","pipe"]){let t=_(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await Rm(e,pt(t,a.files?.formulas)):Ze(e,void 0)}}async function Rm(e,t){if(a.formulas[e]?.file===t)return;let n=te.map(o=>a.formulas[o]).find(o=>o?.file===t);if(Ze(e,n),!n)try{let o=await Tr(t);Ze(e,o),j(o)&&ce("unwritten",{file:o}),o.theirs&&ce("conflict",{file:o})}catch(o){if(!(o instanceof w||o instanceof SyntaxError))throw o}}async function Tr(e){let t=await ze(rn,e);return j(t)&&Vo(t),t}var Kn=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function an(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:c,material:p}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(c),i(c)),colour:n.materials[p].pbrMetallicRoughness.baseColorFactor}))}function El(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:c,indices:p}=e;for(let m=0;m<p.length;m+=3){let h=[];for(let $=0;$<3;++$){let k=3*p[m+$],A=3*p[m+($+1)%3],F=c[k+i]-t,xe=c[A+i]-t;if(F>0==xe>0)continue;let _a=F/(F-xe),$a=[1e3*(c[k]+_a*(c[A]-c[k])),1e3*r*(c[k+o]+_a*(c[A+o]-c[k+o]))];F>0?h.push($a):h.unshift($a)}h.length===2&&l.push([h[0],h[1]])}return l}function Cl(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Gn(e){let t=e.positions,[n,o,i,r,l,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let m=0;m<t.length;m+=3)i=Math.min(i,t[m]),r=Math.max(r,t[m]),l=Math.min(l,t[m+1]),c=Math.max(c,t[m+1]),n=Math.min(n,t[m+2]),o=Math.max(o,t[m+2]);let p=n+(o-n)*.50137;return{loops:Cl(El(e,p)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*c,cut_y:-1e3*p}}function Il(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>Cl(El(e,n+r*o,"level"))).reduce((r,l)=>Ll(l)>1.001*Ll(r)?l:r)}function Ll(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Sr(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],c)=>{let[p,m]=i[(c+1)%i.length];if(!(Math.min(l,m)>t||Math.max(l,m)<t))for(let h of l===m?[r,p]:[r+(t-l)/(m-l)*(p-r)])n=Math.min(n,h),o=Math.max(o,h)});return n<=o?[n,o]:[e.left,e.right]}var Bl=40,Pm=2e3,Rr=0;async function Wl(e){let t=await rt({kind:"glb",gauge:e}),n=an(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function ln(e){let[t,n]=await Promise.all([Ue(e),Wl(e)]),o=Gn(n);return{gauge:t,outline:o,above:Il(n,o)}}async function Am(e){let{pockets:t}=await Ue(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Bl},(i,r)=>`${(n*(r+1)/Bl).toFixed(4)} mm`);return Ue({...e,depth:o})}function Me(){Dm()}async function Dm(){let e=_(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++Rr,n=pt(e,a.files?.moulds);try{let[o,i]=await Promise.all([Am({file:n}),Wl({file:n})]);t===Rr&&f({measured:{mould:n,gauge:o,outline:Gn(i)},measuring_failed:void 0})}catch(o){if(t!==Rr)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Me,Pm)}}var Mm=30,Om=1200,jl=0,Pr=!1,Ar=!1;function Mr(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Fr()}var mt=()=>f({mould:void 0,mesh:void 0}),un=(e,t,n)=>Mr(qn(Te,e),t,n);async function Ul(e,t){let n=await ze(Te,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&b(n,{now:{...n.now,name:""}}),Mr(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Hl({id:e,file:t,text:n}){let o=t?await ze(Te,t,e):qn(Te,JSON.parse(n),e);Mr(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var D=()=>a.mould,S=()=>D().open.now;function K(e,t){Fm(e),ge(D().open,W(S(),e,t))}var Dr="",Nl=0;function Fm(e){let t=performance.now(),{past:n}=D();(e!==Dr||t-Nl>Om||!n.length)&&b(D(),{past:[...n,S()]}),b(D(),{future:[]}),[Dr,Nl]=[e,t]}function zl(){let{past:e,future:t,open:n}=D(),o=e.at(-1);o&&(b(D(),{past:e.slice(0,-1),future:[...t,n.now]}),ql(o,"Undone"))}function Jl(){let{past:e,future:t,open:n}=D(),o=t.at(-1);o&&(b(D(),{past:[...e,n.now],future:t.slice(0,-1)}),ql(o,"Redone"))}function ql(e,t){Dr="",f({typed:void 0}),ge(D().open,e),ie(t)}var Lm=["name","note","owned","unmould_after"];function Or(e){let t=S(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!Lm.includes(l)))&&b(D(),{is_old:!0});let i=n.some(l=>D().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(D().is_old||i||r)&&Fr()}function Fr(){clearTimeout(jl),jl=window.setTimeout(()=>{Em()},Mm)}async function Em(){if(Pr)return void(Ar=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!De(t,"shape")&&!De(t,"mesh"))){if(Jn(t).length)return b(e,{complaint:void 0});Pr=!0;try{let n=Te.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await ln(o);e.open.now===t&&b(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;e.open.now===t&&Lr(n)}finally{Pr=!1,Ar&&Fr(),Ar=!1}}}function Lr(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;b(D(),{complaint:{field:jo(S(),t),line:l,keep:i&&{...i,at:jo(S(),i.at)},about:r===void 0?void 0:jo(S(),`${t}/${r}`)}})}var Er=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],Vl=e=>e.filter(t=>t.theirs),Xe=e=>Vl(Er(e==="apart"?["apart"]:["pour","pipe"]))[0],Yo=()=>[a.run,...Er(te)].filter(e=>e.is_taken&&!e.theirs),Qo=()=>Vl([a.run,...Er(te)]);var Yn=()=>a.formulas.apart?"apart":"run",Kl=e=>f({dangers:{...a.dangers,[Yn()]:e}});function Gl(e){let t=e.cautions.filter(n=>n.severity==="danger");Kl(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function Yl(e){e.lye_heavy&&Kl([{text:fe(e),is_of_heat:!1}])}var Cm=400,Im=2e3,Zo=0;function Qn(){clearTimeout(Zo),Zo=window.setTimeout(()=>{Oe()},Cm)}async function Oe(){clearTimeout(Zo);let{run:e}=a;try{await jt(e),j(e)&&!e.theirs&&e===a.run&&Qn()}catch(t){if(!(t instanceof w))throw t;t.may_pass&&(Zo=window.setTimeout(()=>{Oe()},Im))}}var Ql=Promise.resolve();function cn(){let e=Ql.then(Bm);return Ql=e.catch(()=>{}),e}async function Bm(){for(let e of te){let t=a.formulas[e];!t||!j(t)||t.theirs||(t.shipped&&e!=="apart"&&await hl(a.run),await jt(t))}}function Zl(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=pt(String(n?.mould??""),a.files?.moulds);return{file:nn("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...Wm(t)}}}function Wm(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var Fe=new Map,Zn=new Set,jm={changed:{},unreadable:[]},pn=()=>new Set(te.flatMap(e=>a.formulas[e]??[]));async function Xl(){let e=Nm(),t=new Set([...pn()].map(({file:o})=>o));for(let o of Fe.keys())!e.has(o)&&!t.has(o)&&Fe.delete(o);for(let o of Zn)e.has(o)||Zn.delete(o);let n=[...e].filter(o=>!Fe.has(o));for(let[o,i]of await eu(n))Fe.has(o)||Fe.set(o,i)}async function eu(e){let t=e.filter(o=>!Zn.has(o)),n=t.length?await tn(new Map(t.map(o=>[o,null]))):jm;return Br(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Cr=async e=>(await eu([e])).get(e)??null,Ir=()=>new Map([...Fe].filter(([e])=>!Zn.has(e)));function Nm(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(sn(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(sn("studio.json")),t(_(n,"/pour/mould")),t(_(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t(_(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t(_(n,`/${o}/formula`));for(let{file:o,now:i}of pn()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Et(o)+r).add(r)}return e}function tu(e,{changed:t}){let n=Object.keys(t).filter(o=>Fe.has(o)&&Fe.get(o)===e.get(o));for(let o of n)Fe.set(o,t[o]);return n}var Br=e=>e.forEach(t=>Zn.add(t));function nu(){return[...pn()].flatMap(({file:e,version:t})=>{let n=Fe.get(e)??t;return Fe.delete(e),n===t?[]:[e]})}var ou=0,Wr=()=>ou;function jr(e){++ou,f({is_old:!0,changed_beside:e})}var Um=1e3,Hm=450,Xo=!1,Ut=!1,Nr=0;function Z(){f({is_old:!0}),Xo?Ut=!0:dn()}async function dn(){if(Xo){Ut=!0;return}Xo=!0,iu(!1);try{do Ut=!1,await zm();while(Ut)}finally{Xo=!1,iu(!0),Ae()}}var iu=e=>{document.documentElement.dataset.settled=String(e)};function ru(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function zm(){let e=ru();try{await cn(),await Xl(),e=ru();let{apart:t}=a.formulas;if(Xe(t?"apart":"run"))return f({is_old:!0});let n=Wr(),o=t?Zl(t.file):{file:a.run.file,run:a.run.now},i=await el(o);if(window.clearTimeout(Nr),!e())return void(Ut=!0);f({plan:i,planned:o,complaint:void 0}),Gl(i);let r=n===Wr();f({is_old:Ut||!r}),r&&f({changed_beside:void 0})}catch(t){if(!(t instanceof w))throw t;if(!e())return void(Ut=!0);Jm(t)}}function Jm(e){f({is_old:!0}),window.clearTimeout(Nr);let t=()=>{f({complaint:e.complaint}),Yl(e.complaint)};a.complaint||!a.plan?t():Nr=window.setTimeout(t,Hm),e.may_pass&&window.setTimeout(Z,Um)}var ei=e=>Object.values(a.formulas).includes(e),su=e=>`${String(_(e,"/pour/formula"))}
${String(_(e,"/pipe/formula"))}`;function qm(e,t){_(e,"/pour/mould")!==_(t,"/pour/mould")&&Me(),su(e)!==su(t)&&dt(),Z(),Qn()}var Vm=Z;function Km(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String(_(r,o)??"").endsWith(Ct(t))?W(r,o,e.file):r;kr(a.run,i),i(a.run.now)!==a.run.now&&ge(a.run,i(a.run.now))}}function au(){je("edited",({file:e,before:t})=>{e===a.run?qm(t,e.now):ei(e)?Vm():e===a.mould?.open&&Or(t)}),je("gave_way",({file:e})=>{if(e===a.mould?.open)return Or();e===a.run&&(Me(),dt().then(Z)),Z()}),je("unwritten",({file:e})=>{e===a.run?Oe():ei(e)&&Z()}),je("conflict",({file:e})=>{ei(e)&&f({is_old:!0})}),je("renamed",({file:e})=>{e===a.run&&(localStorage.setItem("run",e.file),Me(),dt()),Z()}),je("copied",({file:e,from:t})=>{ei(e)&&Km(e,t),e===a.run&&(localStorage.setItem("run",e.file),Z())})}var Xn=["runs","formulas","moulds"],eo=["weigh","set-up","watch","money","mould","print"],Se=e=>Xn.some(t=>t===e),Je=e=>eo.some(t=>t===e);var to=()=>f({own_fats:{}});function mn(e){let t=Ur(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Ur(e){let t=a.formulas[e],n=_(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=`${t.file}
${n}`,i=a.own_fats[o];return i||(lu(o,"waiting"),Gm(n,t.file).then(r=>lu(o,r)),"waiting")}var lu=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function Gm(e,t){for(let n of new Set([Et(t)+e,e])){let o=await Ym(n);if(Array.isArray(o?.fats))return o.fats.map(Qm)}return"none"}async function Ym(e){try{return V((await oe(e)).text)}catch{return}}var Qm=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:Zm(n)});function Zm(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var fn=[],no;function ti(){fn.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||fn.push(e);no===void 0&&cu()}function uu(e){let t=a.own_moulds[e];return!t&&e!==no&&!fn.includes(e)&&fn.push(e),no===void 0&&fn.length&&cu(),t}async function cu(){for(;(no=fn.shift())!==void 0;){let e=no,t=await Xm(e);f({own_moulds:{...a.own_moulds,[e]:t}})}}async function Xm(e){try{let{pockets:t}=await Ue({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof w))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var du=()=>f({own_tips:{}}),Hr=!1;function mu(){return!a.tips&&!Hr&&(Hr=!0,rl().then(e=>f({tips:e}),hu).finally(()=>Hr=!1)),a.tips??[]}function fu(e){let t=sn(e),n=a.own_tips[t];return n||!e||a.typed?n??[]:(pu(t,[]),oe(t).then(({text:o})=>pu(t,ef(o)),hu),[])}var pu=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function ef(e){let t=V(e)?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function hu(e){if(!(e instanceof w))throw e}var ni=300,tf=5e3,wu=2e3,nf=500,gu=!1,oo=new AbortController,yu=()=>oo.abort(),vu=()=>document.visibilityState==="hidden";function xu(){if(gu)return;gu=!0;let e=async()=>{oo=new AbortController;let t=await of(oo).then(()=>vu()?tf:ni,()=>oo.signal.aborted?ni:wu);await _u(ni),await _u(t-ni,oo.signal),e()};e()}var _u=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),ku=()=>[a.run,...a.mould?[a.mould.open]:[],...pn()],Tu=()=>new Map(ku().flatMap(Al)),$u=()=>JSON.stringify([[...Tu().keys()],[...Ir().keys()]]);async function of(e){let[t]=nu();t!==void 0&&await bu(t);let[n,o]=[Tu(),Ir()],i=new Map([...o,...n]),r=[...o].every(([p,m])=>i.get(p)===m),l=r&&!vu()?await rf(i,e):await tn(i);Br(l.unreadable),await sf(n,l);let[c]=tu(o,r?l:await tn(o));c!==void 0&&await bu(c)}async function rf(e,t){let[n,o]=[$u(),Date.now()],i=window.setInterval(()=>{($u()!==n||Date.now()-o>ur+wu)&&t.abort()},nf);try{return await Xa(e,t.signal)}finally{window.clearInterval(i)}}async function sf(e,{changed:t}){let n=pn();for(let o of ku()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await af(o,i):await yr(o,i,Cr,()=>{}))}}async function af(e,t){await yr(e,t,Cr,()=>jr(e.file))&&(to(),Z())}async function bu(e){jr(e),await vr(),to(),du(),f({measured:void 0}),Me(),ti(),await dt(),Z()}var zr=s`<span aria-hidden="true">⚠</span> Danger`;function io(e,t="",n){let o=Ht(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${zr}</strong> ${i}</p>`)}
  </div>`:u}function Ht(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function Su(){let e=Se(a.view)||Yn()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var Ru=()=>Su().length>0;function Pu(){let e=Su(),t=cf();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${zr}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${lf()?s`<button type="button" @click=${uf}>To the question</button>`:u}
          </div>`:u}
  </section>`}var lf=()=>Xe(Yn())!==void 0&&!Se(a.view);function uf(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function cf(){if(!a.run.file||a.view==="reading")return"";let e=Xe(Yn());return e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var Jr=e=>e==="run"?a.run:a.formulas[e],qr=e=>Jr(e)?.now,g=(e,t)=>_(qr(e),t),N=(e,t)=>String(g(e,t)??"");function ft(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function H(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function X(e,t,n){let o=Jr(e);!o||_(o.now,t)===n||(Nt(`${e} ${t}`),ge(o,W(o.now,t,n)))}function Au(e,t){let n=Jr(e);n&&(Nt(),f({typed:void 0}),ge(n,t(n.now)))}var Du="examples/spring_cups.run.json";async function Mu(e){let t=await it();f({files:t});let n=t.runs.some(o=>o.file===e.run);try{await ht(n?e.run:pf(t),n||!e.run?e.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Ou(){let[e,t]=await Promise.all([ol(),il()]);f({fats:e,catalogue:t})}function pf(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(r=>r.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Du)?Du:e.runs[0]?.file??"")}async function ht(e,t="weigh"){if(!e)return f({view:"runs"});a.run.file&&j(a.run)&&await Oe();let n=await ze(It,e);No(n),f({view:t}),localStorage.setItem("run",n.file),j(n)&&(Vo(n),Qn());let o=dn();Me(),await Promise.all([o,dt()]),xu()}var df=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function Vr(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.cavities,pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}}};df()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,o.spoilage=t.spoilage??"0 %",o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await ct({kind:It,name:st(e.name,".run.json"),text:Q(o)});await ht(i,"set-up")}var mf="examples/plain_bars.run.json";function gt(e){to();let t=Je(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function ro(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return gt(t);a.run.file||await ht(mf,"reading"),await ff(e)}async function ff(e){let t={past:a.past,future:a.future};f({run_steps:t,past:[],future:[]});try{Ze("apart",await Tr(e))}catch(n){throw f({...t,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),gt("apart"),dn()}async function hf(){let e=a.formulas.apart!==void 0;return await Kr()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function Kr(){return a.formulas.apart?await gf()?(dn(),!0):!1:!0}async function gf(){try{await cn()}catch(t){if(!(t instanceof w))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return ie("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Ze("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Gr(e){let{file:t}=a.formulas.apart;await hf()&&X("run",`/${e}/formula`,t)}var _f=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Fu=e=>Eu(_f(e));async function Lu(e,t){let{$schema:n,...o}=JSON.parse((await oe(e)).text);await Eu({...o,name:t},e)}async function Eu(e,t){let n=st(String(e.name),".formula.json"),{file:o}=await ct({kind:rn,name:n,text:Q(e),from:t});await ro(o)}function Yr(e){return Math.min(a.batch,e.batches.length-1)}function hn(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,l=Yr(e),c=n[l],{pour:p,pipe:m,dust:h,lye_pot:$,bottles:k}=c;return{...r,pour:p,pipe:m,dust:h,lye_pot:$,bottles:k,batch:c,place:`batches.${l}`,whippings:m?.whippings??[],whole:e}}var q=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,$f=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Le(e,{pieces:t,casts:n}){let o=e.cut?q(t,"bar"):q(t,"piece");return n===t?o:`${o} from ${q(n,...$f(e))}`}var so=e=>e===1?"once":`${e} times`,gn=e=>e.batches.length>1,ee=e=>e.pieces.batches>1;function _n(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function Cu(e,{count:t,numbers:n}){return ee(e)?gn(e)?`made ${so(t)}: ${t===1?"batch":"batches"} ${_n(n.map(String))} of ${e.pieces.batches}`:`made ${so(t)}`:""}function _e(e){return ee(e.whole)?`one batch, ${Le(e.whole,e.batch)}`:""}var Iu=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Qr(e,t){return Iu(e)?`${Le(e.whole,t)}${t.count>1?`, whipped ${so(t.count)}`:""}`:""}function ao(e,t){let n=Qr(e,t);return n&&`one whipping: ${n}`}var Bu=e=>ee(e.whole)||Iu(e),oi=(e,t)=>`${q(e,"filling")} of ${q(t,"cavity","cavities")}`;var Wu=M`<path class="wall" d="M30 10l8 52h44l8-52" />`,ju={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:M`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Wu}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:M`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:M`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Wu}<path class="measure" d="M20 10h80" />`}};function Nu(e,t=""){let{name:n,words:o,drawing:i}=ju[e],r=`term ${e} ${t}`,l=a.open.has(r);return s`<span class="term"
    ><button
      type="button"
      aria-expanded=${l?"true":"false"}
      aria-label="What ${n} means"
      @click=${()=>ut("open",r)}
    >
      <span aria-hidden="true">?</span></button
    >${l?s`<span class="term-words" role="note"
            >${i?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${i}</svg>`:u}<span><b>${n}</b>: ${o}</span></span
          >`:u}</span
  >`}var ri=28.349523125,Ju=25.4,bf=29.5735295625;function qe(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function v(e,t){return wf(qe(e,t))}var wf=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function et(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${qe(e,t)} %`:Zr(e)?"just below 0 %":"0.0 %"}var Zr=e=>e<0||Object.is(e,-0),qu=e=>Math.abs(e-Math.round(e))<1e-6;function Uu(e){return e?[0,1,2,3].find(t=>qu(e*10**t))??3:0}function Hu(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function yf(e){return[0,1,2].find(t=>e.every(n=>qu(n*10**t)))??3}function si(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function pe(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-yf([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Vu=.001;function ii(e,t,n,o,i=1e-9){let r=10**n;return qe(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var zu=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function vf(e){if(!zu.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return zu.find(t=>Math.abs(t*ri-e)<.6*Vu)}function z(e,t,n="nearest"){let o=t.scale_step_g||.1,i=vf(o),r=Math.min(.6*Vu,o/2),l=i?ii(t.g,1,Hu(o),n):ii(t.g,1,Uu(o),n,r),c=i?ii(t.g,ri,Uu(i),n,r):ii(t.g,ri,Hu(o/ri),n),[p,m]=[`${t.g_text??l} g`,`${t.oz_text??c} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[m,p]:si(e,p,m)}var O=(e,t,n=1,o="nearest")=>z(e,{g:t,scale_step_g:10**-n},o);function ne(e,t,n=1){return si(e,`${qe(t,n)} ml`,`${qe(t/bf,2)} US fl oz`)}function re(e,t){return si(e,`${v(t,1)} mm`,xf(t))}function xf(e){let t=Math.round(Math.abs(e)/Ju*16),n=e<0&&t?"-":"",o=t%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/16),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Xr=([e])=>e,P=([e,t])=>t?`${e} (${t})`:e;function Ku(e,t){return si(e,`${qe(t,0)} \xB0C`,`${qe(t*1.8+32,0)} \xB0F`)}function $n(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Ju;return n*o}function bn(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var ai=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function wn(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function _t(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var Gu=e=>e.goes_into==="lye",Yu=({role:e})=>e==="alkali",kf=e=>Yu(e)?"down":"nearest",tt=(e,t)=>z(e,t,kf(t));function yn(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>Gu(i)),n=({one:i})=>i.role==="water",o=({one:i})=>Yu(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function li(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!Gu(t))}function vn(e,t=()=>{}){if(!e.theirs)return u;let n=e.theirs.text===null,o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{kl(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?u:s`<button type="button" @click=${()=>xl(e)}>Load the saved file</button>`}
      <button type="button" @click=${i}>Overwrite it with this page</button>
    </div>
  </section>`}function xn(e){if(e.theirs||!e.set_aside||Go(e)&&!e.is_taken)return u;let t=()=>{Go(e)&&Nt(),Tl(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>yl(e)}>Close</button>`:u}
    </div>
  </section>`}var zt={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Qu=e=>(...t)=>({_$litDirective$:e,values:t}),ui=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:bx}=Ia;var Zu=e=>e.strings===void 0;var Tf={},Xu=(e,t=Tf)=>e._$AH=t;var J=Qu(class extends ui{constructor(e){if(super(e),e.type!==zt.PROPERTY&&e.type!==zt.ATTRIBUTE&&e.type!==zt.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Zu(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===ke||t===u)return t;let n=e.element,o=e.name;if(e.type===zt.PROPERTY){if(t===n[o])return ke}else if(e.type===zt.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return ke}else if(e.type===zt.ATTRIBUTE&&n.getAttribute(o)===t+"")return ke;return Xu(e),t}});var G=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function es(e,t){return _(qr(e),t)}function Ve(e,t){let n=a.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return Jt(e)?fe(n):void 0}function se(e,t){return a.complaint?.field===t?Ve(e,t):void 0}function Jt(e){let t=a.complaint,n=e==="run"?a.run.file:a.formulas[e]?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function Sf(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(es(e,n)??{}).length>1?t:n}function qt(){let e=a.complaint;if(e)for(let t of["run",...te])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ve(t,n)&&document.getElementById(G(t,n));if(o)return o}}function Rf(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=Pf(e,n);return o&&ai(t)?`${t.trim()} ${o}`:t}function Pf(e,t){return bn(es(t,e.at))||e.unit||""}var $e=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,ts=!1;addEventListener("pointerdown",()=>ts=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>ts=!1,!0);var ec=()=>f({typed:void 0});function ns(){ts?addEventListener("pointerup",()=>setTimeout(ec),{once:!0}):ec()}function d(e){let t=e.of??"run",n=G(t,e.at),o=es(t,e.at),i=a.typed?.key===n?a.typed.text:o===void 0?"":String(o),r=Ve(t,e.at),l=m=>{let h=m.target.value;f({typed:{key:n,text:h}});let $=Rf(e,h);X(t,$===void 0&&e.takes_part?Sf(t,e.at):e.at,$)},p=(a.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||e.hint;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${r?"wants":""}"
  >
    <label for=${n}>${e.label}</label>
    <input
      id=${n}
      .value=${J(i)}
      @input=${l}
      @blur=${ns}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${r?"true":"false"}
      aria-describedby=${[r||p?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${$e(n,r,p)}
  </div>`}function ci(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var Re=e=>()=>document.getElementById(e),bt=(e,t)=>Re(G(e,t)),Vt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),Af=()=>document.activeElement;function pi(e){requestAnimationFrame(()=>ci(e()))}function kn(e,t,n,o=Af){ie(t),Au(e,n),pi(o)}function Y(e,t,n,o,i){kn(e,t,r=>W(r,n,o),i)}var $t=(e,t,n)=>`${G(e,t)}-${n}`;function E(e,t){let n=se(e,t);return n?s`<p id=${G(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var tc=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ae(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${tc(t,n,o)}</div>`}function y({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:c,then:p,hint:m}){let h=i?$t(e,n,t.replaceAll(/\W+/g,"-")):G(e,o),$=i?void 0:se(e,o),k=A=>{if(A===r)return;let F=l.find(([xe])=>xe===A)[1];Y(e,`${t}: ${F}`,n,c(A),p&&bt(e,p(A)))};return s`<div class="field asked ${$?"wants":""}">
    <p class="question" id="${h}-label">${t}</p>
    <div
      class="choice"
      role="group"
      id=${h}
      tabindex="-1"
      aria-labelledby="${h}-label"
      aria-describedby=${$||m?`${h}-said`:u}
    >
      ${tc(r,l,k)}
    </div>
    ${$e(h,$,m)}
  </div>`}function os(e,t,n,o){let i=G("run",e),r=se("run",e),l=()=>Y("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${$e(i,r)}`}function Ee({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:c}){let p=G(t,n),m=Ve(t,n),h=l??N(t,n),$=!h||o.some(([F])=>F===h),k=[["",i],...$?[]:[[h,h]],...o];return s`<div class="field choose ${m?"wants":""}">
    <label for=${p}>${e}</label>
    <select
      id=${p}
      @change=${F=>{let xe=F.target.value;c?c(xe):X(t,n,xe||!r?xe:void 0)}}
      aria-invalid=${m?"true":"false"}
      aria-describedby=${m?`${p}-said`:u}
    >
      ${k.filter(([F])=>F||r||!h).map(([F,xe])=>s`<option value=${F} .selected=${J(F===h)}>${xe}</option>`)}</select
    >${$e(p,m)}
  </div>`}function Tn(e,t,n=[]){let o=pt(N("run",t),n);return Ee({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function be({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let c=$t(e,t,"part"),p=$t(e,t,"add");return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${p} @click=${()=>Y(e,`${o} added`,t,r,Vt(c))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>Y(e,`${o} removed`,t,void 0,Re(p))}
      >
        Remove
      </button>
    </div>
    ${E(e,t)} ${l()}
  </div>`}var nc=(e,t)=>`folded ${e} ${t}`,oc=(e,t)=>$r(nc(e,t));function R({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=nc(e,t);(i||n.some(m=>Ve(e,m)))&&$r(l);let c=a.open.has(l);return s`<details .open=${c}>
    <summary @click=${m=>{m.preventDefault(),ut("open",l)}}>${o}</summary>
    ${c?s`<div class="folded">${r()}</div>`:u}
  </details>`}var T=({of:e="run",at:t})=>ft(e,t),L=({of:e="run",at:t},n)=>$t(e,`${t}/${n}`,"item"),di=({of:e="run",at:t},n,o)=>$t(e,`${t}/${n}`,o),Df=({of:e="run",at:t})=>G(e,t);function lo(e,t,n,o){let{of:i="run",at:r,stays:l,and:c=p=>p}=e;kn(i,t,p=>c(W(p,r,n.length||l?n:void 0),n.length),o)}function I(e,t,n){let o=T(e);lo(e,`${n} added`,[...o,t],Vt(L(e,o.length)))}function Mf(e,t,n){let o=T(e).filter((l,c)=>c!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);lo(e,`${n} removed`,o,r?Re(di(e,i,"drop")):bt(e.of??"run",e.at))}function Of(e,t,n,o){let i=[...T(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",p=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;lo(e,`${o} moved ${l}`,i,Re(di(e,t+n,p)))}function U(e,t,n){let o=T(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(c,p,m)=>s`<button
      type="button"
      id=${di(e,t,p)}
      ?disabled=${m}
      aria-label="${n} ${p}"
      @click=${()=>Of(e,t,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${di(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Mf(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function B(e,t,n){let o=Df(e),i=se(e.of??"run",e.at);return s`${$e(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}function ic(e){let t=N(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${d({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${d({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${Cf(e)}
    ${R({of:e,name:"density",pointers:["/measured_density"],summary:`Density measured${t&&`: ${t}`}`,body:()=>d({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Ff=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],rc={after:"",mass:""},sc=3,Lf={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:sc},()=>rc)}}};function Ef(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Cf(e){let t=Ef(e);return s`${y({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Ff,puts:o=>({...H(e,"",["drying","water_lost_in_cure"]),...Lf[o]})})}
  ${t==="share"?s`<div class="row">
          ${d({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${d({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${d({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?If(e):u}`}function If(e){let t={of:e,at:"/drying/weighings",least:sc};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${T(t).map((n,o)=>s`<div class="row named" id=${L(t,o)}>
          ${d({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${d({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${U(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${B(t,"One more weighing",()=>I(t,rc,"weighing"))}`}var Bf=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],mi=e=>mn(e).map(t=>[t.id,t.name]),ac=["unsaid","Not given"],lc=["none","Holds none"],uc=e=>e===void 0?"unsaid":e==="none"?"none":"some",Wf=e=>t=>t==="some"?e:t==="none"?"none":void 0;function cc(e,t){return is(e,`${t}/contains_fat`,[ac,lc,["some","Holds fat"]],mi(e))}function is(e,t,n,o){let i=uc(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${y({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:Wf({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${Ee({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${d({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var jf=[ac,lc,["some","Holds acid"],["typed","By what it takes up"]],Nf={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function rs(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":uc(g(e,n));return s`${y({of:e,question:"Acid in it",at:n,chosen:o,answers:jf,puts:i=>Nf[i]})}
  ${o==="some"?s`<div class="row">
          ${Ee({label:"Which acid",of:e,at:`${n}/acid`,answers:Bf.map(i=>[i,i]),unsaid:"choose ..."})}
          ${d({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${d({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?ss(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function ss(e,t,n){let o=g(e,t)===!0?"yes":"no";return y({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Uf=["tsp/lb","tbsp/lb","tsp/kg"],fi=["%","g/kg",...Uf].flatMap(e=>[`${e} of fats`,`${e} of batter`]),dc=[...fi,"% of finished soap","g/kg of finished soap"];function pc(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function hi(e,t,n,o,i=!1){let r=G(e,t),[l,c]=pc(N(e,t),o),p=a.typed?.key===r?a.typed.text:l,m=Ve(e,t),h=(k,A)=>{let F=`${k.trim()} ${A}`.trim();X(e,t,i&&!k.trim()?void 0:F),Ae()},$=k=>{let A=k.target.value,[F,xe]=pc(A,o);f({typed:{key:r,text:A}}),h(F,xe||c)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${J(p)}
        @input=${$}
        @blur=${ns}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${k=>h(p,k.target.value)}
      >
        <option value="" .selected=${J(c==="")}>of what?</option>
        ${o.map(k=>s`<option value=${k} .selected=${J(k===c)}>${k}</option>`)}
      </select>
    </div>
    ${$e(r,m)}
  </div>`}function Hf(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var zf=.01+1e-9;function gi(e,t){let{sum:n,unread:o}=Hf(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=zf?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var hc=(e,t)=>mn(e).find(n=>n.id===t)?.name??t,uo=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),$i=e=>T(uo(e));function gc(e){let t=$i(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>Jf(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?gi("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?$c(e):B(uo(e),"Add a fat",()=>_c(e,t.length))} ${Qf(e)}
  </section>`}function Jf(e,t,n){let o=`/fats/${t}`,i=hc(e,String(n[t].fat??""))||"Which fat?",r=se(e,`${o}/fat`)??se(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${L(uo(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${G(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?as():_c(e,t)}
      >
        ${i}
      </button>
      ${d({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${U(uo(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?$c(e):u}
    ${R({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${qf(n[t])}`,body:()=>Gf(e,t)})}
  </li>`}function _c(e,t){f({picking:{of:e,row:t,text:""}}),pi(Re("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function as(){let e=a.picking;f({picking:void 0}),e&&pi(bt(e.of,e.row<$i(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function mc(e,t){let{row:n}=a.picking,o=$i(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};lo(uo(e),`${hc(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],bt(e,`/fats/${n}/share`))}var _i=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function fc(e,t){let n=_i(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>_i(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function $c(e){let{row:t,text:n}=a.picking,o=$i(e).map(p=>p.fat),i=mn(e).filter(p=>fc(p,n)!==void 0),r=i.filter(p=>!o.includes(p.id)||o[t]===p.id);return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${p=>{a.picking.text=p.target.value,Ae()}} @keydown=${p=>{p.key==="Escape"&&as();let m=r.length===1?r[0]:r.find(h=>_i(h.name)===_i(n.trim()));p.key==="Enter"&&m&&mc(e,m.id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${as}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(p=>{let m=o.includes(p.id)&&o[t]!==p.id,h=fc(p,n);return s`<button
          type="button"
          ?disabled=${m}
          aria-pressed=${o[t]===p.id?"true":u}
          @click=${()=>mc(e,p.id)}
        >
          ${p.name}${h===p.name?"":`, ${h}`}${m?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function qf(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Vf=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Kf={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Gf(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(c,p)=>d({label:c,of:e,at:p,number:!0,short:!0});return s` ${d({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${y({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Vf,puts:c=>Kf[c],hint:Yf(e,N(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?ss(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Yf(e,t){let n=mn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function Qf(e){let t=Ur(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=N(e,"/own_fats");return R({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>d({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var bc="danger-of-superfat";function wc(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${d({label:"Superfat: of all that is fat, left without lye",of:e,at:"/superfat",unit:"%",described_by:Ht(e).length?bc:void 0})}
    </div>
    ${io(e,bc)} ${Zf(e)} ${ih(e,t)}
  </section>`}function Zf(e){let t=ft(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${y({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Xf(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>eh(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${gi("The two",t.map(i=>i.share))}
        </p>`:u}`}function Xf(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function eh(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=se(e,i)??se(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?d({label:`${r}: share of the saponifying`,of:e,at:`${i}/share`,unit:"%",hint:"By equivalents, not by weight."}):u}
      ${d({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${R({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${th(t.purity_range)}`,body:()=>nh(e,i)})}
  </div>`}var th=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function nh(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${y({of:e,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${d({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${d({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var oh={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function ih(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(oh);return s`${y({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:sh(t)})}
    <div class="row">${n.map(r=>rh(e,r))}</div>`}function rh(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?d({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?d({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):d({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function sh(e){if(!(!e||a.is_old))return`It now makes a strength of ${v(e.lye_strength_percent,1)} %; ${v(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${v(e.water_percent_of_fats,1)} % of the fats.`}function wt(e,t,n){let o=ah(e,t);return R({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${uh(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${yc(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>ch(e,i,r))}
        ${d({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function ah(e,t){let n=ft(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var ls={name:"",share:""},lh={unsaid:void 0,one:"",many:[ls]};function uh(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...ls,name:o}]:lh[l];return s`${y({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?d({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${yc(e,t,"INCI name","One more INCI name")}`:u}`}function ch(e,t,n){return y({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function yc(e,t,n,o,i){let r={of:e,at:t};return s`${T(r).map((l,c)=>s`<div class="row named" id=${L(r,c)}>
        ${d({label:`${n} ${c+1}`,of:e,at:`${t}/${c}/name`})}
        ${d({label:`Share ${c+1}`,of:e,at:`${t}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${c}`,c)??u} ${U(r,c,String(l.name||`${n} ${c+1}`))}
      </div>`)}
  ${B(r,o,()=>I(r,ls,n))}`}var ph=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:wh},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:fh},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:hh},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:gh}];function vc(e){return ph.map(t=>{let n={of:e,at:`/${t.list}`},o=T(n),i=(r,l)=>s`<li class="formula-row" id=${L(n,l)}>
        ${mh(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${B(n,t.add,()=>I(n,dh(t),t.add.replace("Add ","")))}
    </section>`})}function dh(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function mh(e,t,n,o,i){let r=`/${t.list}/${i}`,l=se(e,r),c=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${d({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:hi(e,`${r}/rate`,"How much",fi)}
      ${U(n,i,c)}
    </div>`}function us(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return y({of:e,question:"Goes into",at:i,chosen:r,answers:n,puts:c=>c,hint:o||r?void 0:"The batter, unless you name another place."})}var xc=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function cs(e,t,n){let o=(l,c,p)=>l?`${c}${String(l)}${p}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return R({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${d({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${d({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${hi(e,`${t}/limit`,"The most that the supplier's document allows",dc,!0)}`})}function ps(e,t,n,o){let i=(l,c)=>l===void 0?"":l==="none"?`no ${c}`:c,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return R({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${cc(e,t)} ${o?rs(e,t):u}`})}var bi=(e,t,n)=>wt(e,t,String(n.name||"it"));function fh(e,t,n){return s`${us(e,t,xc,!0)}
    <div class="folds">${ps(e,t,n,!0)} ${cs(e,t,n)} ${bi(e,t,n)}</div>`}function kc(e,t,n){return R({of:e,name:`${t} place`,pointers:[`${t}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>us(e,t,xc,!1)})}function hh(e,t,n){return s`<div class="folds">
    ${cs(e,t,n)} ${bi(e,t,n)} ${kc(e,t,n)} ${ps(e,t,n,!1)}
  </div>`}function gh(e,t,n){return s`${$h(e,t)}
    <div class="folds">
      ${cs(e,t,n)} ${bi(e,t,n)} ${kc(e,t,n)} ${ps(e,t,n,!0)}
    </div>`}var _h=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function $h(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${y({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${Ee({label:"Which oil",of:e,at:`${n}/fat`,answers:mi(e),unsaid:"choose ..."})}
            ${d({label:"g of oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${y({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:_h,puts:l=>l,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var bh=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function wh(e,t,n){let o=(i,r,l)=>R({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${vh(e,t,n)}
    ${us(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${kh(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>yh(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>rs(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>d({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${bi(e,t,n)}
    </div>`}function yh(e,t){let n=g(e,t)===!0?"ice":"liquid";return y({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function vh(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...H(e,t,["replaces","rate"]),[r]:""});return s`${y({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:xh,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${d({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?hi(e,`${t}/rate`,"Rate",fi):u}`}var xh=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function kh(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(c,p)=>d({label:c,of:e,at:`${n}/${p}`,unit:"%",short:!0});return s`${y({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${is(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...mi(e)])}
          <div class="row">
            ${d({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${Ee({label:"Built-in figures of",of:e,at:n,answers:bh.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var ds=!1;function Tc(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!ds&&Sh(),{workings:Th(n?.workings,e),complaint:n?.complaint,is_old:o}}function Th(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function Sh(){let{plan:e,planned:t}=a;if(!(!e||!t)){ds=!0;try{let{how:n}=await tl(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{ds=!1}}}function x({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>ut("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${c?s`<div class="sum" id=${p}>${i?Sc(i):Rh(o)}</div>`:u}
  </div>`}var Kt=(e,t,n)=>x({key:e,label:t,shown:["",""],of:n});function Rh(e){let{workings:t,complaint:n,is_old:o}=Tc(e);return t.length?s`<div class=${o?"old":""}>${t.map(Sc)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Sc({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:c,value:p,from:m})=>s`<tr>
              <th scope="row">${c}</th>
              <td>${p}</td>
              <td>${m??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var Rn="/pipe/beads",le=`${Rn}/tip`,yt={at:`${Rn}/moves`,in_order:!0},ms="\0own",Ac={tip:"",bead_to_opening:"",moves:[]},Ce=(e,t)=>({name:e,label:t,kind:"length"}),Rc={name:"count",label:"How many",kind:"count"},Pc=Ce("circle_radius","Radius of their circle"),hs={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Ce("diameter","Across"),Ce("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[Ce("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Ce("start_radius","Radius at the start"),Ce("end_radius","Radius at the end"),Ce("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Ce("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Rc,Pc,Ce("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Rc,Pc,Ce("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Ce("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function Dc(e){return s`${Ah()} ${gs()?Mh():u}
    ${d({label:"Bead \xF7 tip opening",at:`${Rn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${T(yt).map((t,n)=>Eh(t,n,e))}</div>
    ${Bh()}`}var gs=()=>typeof g("run",le)=="object";function Ph(){let e=g("run",`${Rn}/own_tips`);return e===void 0?mu():fu(String(e))}function Ah(){let e=n=>n===ms?Y("run","a tip of your own",le,{name:"",round:{radius:""}},Oc):X("run",le,n),t=Ph().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${Ee({label:"Tip",at:le,answers:[...t,[ms,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:gs()?ms:void 0})}
  ${gs()?u:R({name:"tips",pointers:[`${Rn}/own_tips`],summary:"Tips of a file of your own",body:()=>d({label:"File of tips",at:`${Rn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var Mc=$t("run",le,"own"),Oc=Vt(Mc),fs=[["round","Round"],["star","Star"],["outline","Another outline"]],wi={x:"",y:""},Dh={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[wi,wi,wi]};function Mh(){let e=fs.map(([n])=>n).find(n=>g("run",`${le}/${n}`)!==void 0),t=n=>({...H("run",le,fs.map(([o])=>o)),[n]:Dh[n]});return s`<div class="part" id=${Mc} role="group" aria-label="My own tip">
    ${E("run",le)} ${d({label:"What you call the tip",at:`${le}/name`})}
    ${y({question:"Opening of the tip",at:le,is_told_elsewhere:!0,chosen:e,answers:fs,puts:t})}
    ${e?Fh(e):u}
    ${R({name:"hand",pointers:[Sn,`${le}/note`],summary:"Correction for your hand",body:Oh})}
  </div>`}var Sn=`${le}/hand`;function Oh(){let e=t=>g("run",t)!==void 0;return s`<div class="row">
      ${d({label:"Correction for your hand",at:`${Sn}/correction`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${e(`${Sn}/correction`)?d({label:"From so many trials",at:`${Sn}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${e(Sn)?s`<button
            type="button"
            @click=${()=>Y("run","correction removed",Sn,void 0,Oc)}
          >
            Leave the correction out
          </button>`:u}
    ${d({label:"Note on the tip",at:`${le}/note`,optional:!0})}`}function Fh(e){if(e==="outline")return Lh();let t=(n,o)=>d({label:o,at:`${le}/${e}/${n}`,unit:"mm",short:!0});return s`<div class="row">
    ${e==="round"?t("radius","Radius of the opening"):s`${d({label:"Points",at:`${le}/star/points`,count:!0,short:!0})}
          ${t("outer_radius","Radius to the points")} ${t("inner_radius","Radius to the notches")}`}
  </div>`}function Lh(){let e={at:`${le}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${T(e).map((t,n)=>s`<div class="row" id=${L(e,n)}>
          ${d({label:`Corner ${n+1}, x`,at:`${e.at}/${n}/x`,unit:"mm",short:!0})}
          ${d({label:`Corner ${n+1}, y`,at:`${e.at}/${n}/y`,unit:"mm",short:!0})}
          ${U(e,n,`corner ${n+1}`)}
        </div>`)}
    ${B(e,"One more corner",()=>I(e,wi,"corner"))}`}function Eh(e,t,n){let o=hs[String(e.move)],i=`${yt.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${L(yt,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${U(yt,t,r)}
    </div>
    ${E("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>Ch(i,l))}
      ${d({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Ih(t,n)}
  </div>`}function Ch(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return d({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function Ih(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==T(yt).length)return u;let i=o.length_mm>0?`${v(o.length_mm/10,1)} cm of bead`:"";return x({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ne(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function Bh(){let e=o=>({move:o,...Object.fromEntries(hs[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=G("run",yt.at),n=se("run",yt.at);return s`${$e(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(hs).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>I(yt,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var Wh={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function co(e,t){return Wh[e].map(({name:n,label:o,unit:i,optional:r})=>d({label:t?`${t}: ${o.toLowerCase()}`:o,at:`/losses/${e}/${n}`,unit:i,short:!0,optional:r}))}var jh=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]);function po(e){let t=`/${e}/temperatures`,n=(o,i)=>d({label:i,at:`${t}/${o}`,unit:a.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return R({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${E("run",t)}
        <div class="row">
          ${n("room_at","Room and dry alkali")} ${n("water_at","Water")}
          ${d({label:"Of the water, as ice",at:`${t}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_below","Batter must stay below")}
          ${Ee({label:"The lye cools in",at:`${t}/cooled_in`,answers:jh,unsaid:"not given",optional:!0})}
        </div>`})}var Fc={holds:"",net:""},Ie=()=>_(a.run.now,"/pipe")!==void 0;function Lc(){let e=_(a.run.now,"/pour/formula")??"";kn("run","Topping added",n=>W(W(n,"/pipe",{formula:e,fills_headspace:"",whip:Fc}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),Re("lane-pipe"))}function Nh(e){let t=Object.keys(_(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",_(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>_(o,i)===void 0?o:W(o,i,void 0),e)}function Uh(){kn("run","Topping removed",Nh,Re("topping-back"))}function Ec(){let e=a.past.at(-1)?.run?.now;return!e||_(e,"/pipe")===void 0||Ie()?u:s`<button type="button" id="topping-back" @click=${Ko}>Bring the topping back</button>`}function _s(){return s`${Kh()} ${po("pipe")}
    <p class="choice"><button type="button" @click=${Uh}>Take the topping away</button></p>`}function $s(e){return s`<h3>How large is the topping?</h3>
    ${E("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${be({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Fc},body:Hh})}
      ${be({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:zh})}
    </div>
    ${be({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Ac,body:()=>Dc(e)})}
    ${e?qh(e):u}`}function Hh(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${T(e).map((t,n)=>s`<div class="row" id=${L(e,n)}>
            ${d({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${U(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${B(e,"One more trial",()=>I(e,"","trial"))}
    <div class="row">
      ${d({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${d({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${E("run","/pipe/trials/weigh_cup")}`}function zh(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${y({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${d({label:"Across",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${d({label:"High",at:`${e}/height`,unit:"mm",short:!0})}
      ${d({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Jh={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function qh(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>x({key:`pipe.by.${i}`,label:Jh[i],note:o(l),shown:ne(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${Vh(e)}`}function Vh(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=v(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&_(a.run.now,`${o}/correction`)!==t.correction,l=()=>Y("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function bs(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${d({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${d({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${E("run","/pipe/whip")}
    ${d({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:e?.loads?`${e.loads} bag loads`:void 0})}`}function Cc(){return s`<h3>What is lost of it</h3>
    <div class="row">${co("pipe")}</div>`}function Kh(){let e=(n,o,i,r=!1)=>d({label:n,at:o,unit:i,optional:r,short:!0});return R({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>s` <div class="items">
        ${be({at:"/pipe/bowl",name:"the bowl",title:"The bowl",add:"Say what the bowl holds",blank:{holds:""},body:()=>s`<div class="row">
              ${e("Bowl holds","/pipe/bowl/holds","l")}
              ${e("Smallest unwhipped amount the whisk reaches","/pipe/bowl/whisk_needs","ml",!0)}
            </div>`})}
        ${be({at:"/pipe/pace",name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
              ${e("Can be piped for","/pipe/pace/open_time","min")}
              ${e("To pipe one","/pipe/pace/time_per_piece","s")}
              ${e("To change the bag","/pipe/pace/time_per_bag_change","s",!0)}
            </div>`})}
        ${be({at:"/pipe/lye_spoon",name:"the lye spoon",title:"Lye by the spoon",add:"Lye is whipped in by the spoon",blank:{holds:"",time_between:""},body:()=>s`<div class="row">
              ${e("Spoon holds","/pipe/lye_spoon/holds","ml")}
              ${e("From one spoonful to the next","/pipe/lye_spoon/time_between","s")}
            </div>`})}
      </div>`})}function Gh(e,{at:t,figure:n}){let o=_(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function yi(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,Gh(e,t))}>It is really so: keep it</button>`:u}var Ic=e=>[...a.files?.runs??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function vi(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${_n(t.map(Ic))}.</p>`:u}function xi(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${_n(t.map(Ic))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}function Yh({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,h])=>h),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,c=l-r-n,p=[e.left-n,c,e.right-e.left+2*n,-e.floor+n-c],m=(h,$)=>M`<path class="shaded pour" fill-rule="evenodd" d=${$} /><path class="wall ${h}" fill-rule="evenodd" d=${$} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${p.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${m("above",Kn(t,l))}${m("side",Kn(e.loops))}
    </svg>
  </div>`}function Pn(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${Yh(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${P(ne(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${P(ne(a.units,i.total_ml))} together`:u},
      ${P(re(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${P(ne(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var Qh={mm:"in",g:"oz","\xB0C":"\xB0F"},Zh={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ki(e,t,n=""){let o=ws(e);if(o)return o.unit??"";let i=bn(_(S(),e));return Zh[t]?.test(i)?i:n||(a.units==="us"?Qh[t]??t:t)}var Ti=()=>f({typed:void 0}),An=e=>`d${e.replaceAll("/","-")}`,ws=e=>a.typed?.key===An(e)?a.typed:void 0,Si=e=>ws(e)?.text??String(_(S(),e)??"");function vt(e){let{complaint:t}=D();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function ys(e,t,n,o){let{pointer:i}=e,r=l=>{let c=l.target.value,p=e.unit?ki(i,e.unit,e.unit_before):"";f({typed:{key:An(i),text:c,unit:p}}),K(i,Xh(e,c,p))};return s`<input
    id=${An(i)}
    .value=${J(Si(i))}
    @input=${r}
    @blur=${Ti}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${vt(i)?"true":"false"}
  />`}function Xh(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&ai(t)?`${t.trim()} ${n}`:t}function we(e,t){let n=An(e.pointer),o=vt(e.pointer),i=eg(e.pointer)??e.hint,r=e.unit?` (${ki(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${ys(e,o||i?`${n}-said`:void 0,t)}
    ${$e(n,o,i)}
  </div>`}function eg(e){let t=_(S(),e),n=ws(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Ri(e){let t=e.toLowerCase(),{file:n,shipped:o}=D().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function mo(e){let{open:t}=D();try{if(await jt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await it()})}catch(n){if(!(n instanceof w))throw n;return Lr(n)}a.run.file&&(Me(),Z()),e(t.file)}var nt="/shape/points",Bc=500,xt=(e,t)=>[nt,e,...t?[t]:[]].join("/"),Wc=e=>Array.from({length:e.least},()=>({}));function jc(e){let t=he(S(),nt),n=ng(),{complaint:o}=D(),i=o?.field===nt&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${ki(xt(-1,r.name),r.unit,Nc(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>tg(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=Bc} @click=${()=>Ai(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function tg(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=og(t),r=l=>{let{name:c,label:p,unit:m}=e.columns[l],h={label:p,pointer:xt(t,c),unit:m,unit_before:Nc(e,t,c)},$=`${p}, ${n.has(t)?o:`point ${t+1}`}`;return ys(h,i?`point-${t}-said`:void 0,ig(e,t,l),$)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Ai(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Uc(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function ng(){let e=[...zn(S()),...Wo(S())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function og(e){let{complaint:t}=D();return vt(xt(e))??(t?.about===xt(e)?t.line:void 0)}function Nc(e,t,n){let o=(i,r)=>bn(_(S(),xt(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Pi(e,t){queueMicrotask(()=>document.getElementById(An(xt(e,t)))?.focus())}function Ai(e,t){let n=[...he(S(),nt)];n.length>=Bc||(n.splice(t,0,{}),Ti(),K(nt,n),Pi(t,e.columns[0].name))}function Uc(e,t,n=0){let o=he(S(),nt).filter((i,r)=>r!==t);Ti(),K(nt,o.length?o:[{}]),Pi(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function ig(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Si(xt(t,o))&&!Si(xt(t,i));if(r.key==="Enter"&&r.shiftKey)Ai(e,t+1);else if(r.key==="Enter"&&n===0)Pi(t,i);else if(r.key==="Enter"&&t+1<he(S(),nt).length)Pi(t+1,o);else if(r.key==="Enter")Ai(e,t+1);else if(r.key==="Backspace"&&l&&he(S(),nt).length>1)Uc(e,t,t>0?1:0);else return;r.preventDefault()}}var vs={weighings:[""]},xs=/\.(3mf|gltf|glb)$/i;function Di(e){let t=lt(e);return t?{kind:e,points:Wc(t)}:{kind:e}}var rg=()=>K("/water",vs),Ke=e=>De(S(),e),fo=()=>Hn(S());function Hc(e){let{open:t,answer:n,is_old:o}=D();return s`${vn(t,()=>{mo(e)})} ${xn(t)}
    ${t.shipped?u:xi(a.files?.moulds.find(i=>i.file===t.file))}
    ${Ke("shape")&&Ke("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${Ke("shape")?ae("Shape",fo(),Object.entries(cl),sg):u}
    <div class="beside ${lt(fo())?"rows":""}">
      <div>
        ${ks()} ${Ke("shape")?lg():u} ${Ke("mesh")?ug():u}
        ${Ts()} ${Ke("water")?pg():u} ${mg()}
      </div>
      <div class="stays">${Pn(n,o,Jc())} ${fg(e)}</div>
    </div>`}function sg(e){let t={...D().shapes,[fo()]:S().shape};b(D(),{shapes:t,answer:void 0}),K("/shape",t[e]??Di(e))}function ag(){let{shipped:e,file:t}=D().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function ks(){let e=ag();return we({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function lg(){let e=fo(),t=lt(e);return s`${on(e).length?s`<div class="row">
          ${on(e).map(n=>we({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?jc(t):u}`}function Ts(e=gr(S())){return s`<div class="row">
      ${e?u:we({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${we({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${we({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${we({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Ss=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Rs=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function ug(){let e=o=>String(_(S(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=vt(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ae(o,e(i),r,c=>K(`/mesh/${i}`,c||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=vt("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${xs.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Ss)} ${t("Which way is up","up",Rs)}
    ${e("role")==="body"?cg():u}
    <div class="row">
      ${we({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${we({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function cg(){let e=_(S(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ae("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>K("/mesh/on_board",t==="yes"?!0:void 0))}`}function pg(){let e=_(S(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":_(e,"/depth")!==void 0?"depth":"below_brim",n=r=>K("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=_(S(),"/water/weighed_in"),i=t===void 0||t==="brim"?vt("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${we({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ae("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?we({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?we({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ae("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>K("/water/weighed_in",r))}
    <div class="row">
      ${he(S(),"/water/weighings").map((r,l)=>we({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},dg(l)))}
    </div>
    ${D().complaint?.field==="/water/weighings"?s`<p class="complaint">${D().complaint.line}</p>`:u}
    <button type="button" @click=${zc}>One more round</button>`}function zc(){let e=he(S(),"/water/weighings").length;K(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var dg=e=>t=>{t.key==="Enter"&&(e+1===he(S(),"/water/weighings").length?zc():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function mg(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${Ke("shape")?u:e("Add measures, as a check",()=>K("/shape",Di("block")))}
    ${Ke("shape")&&Ke("mesh")?e("Leave the measures out",()=>K("/shape",void 0)):u}
    ${Ke("water")?e("Leave the water out",()=>K("/water",void 0)):e("Add weighed water",rg)}
  </div>`}function Jc(){let e=Wo(S()).length;return e?[...Jn(S()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Jn(S())}function fg(e){let t=String(S().name??"").trim(),n=Ri(t),{open:o,answer:i,is_old:r,complaint:l}=D(),c=i&&!r&&!l&&!Jc().length&&t&&!n,p=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{mo(e)}}>
      ${p?"Save the change":"Use this mould"}
    </button>
    ${p?s`<p class="aside">It stays in ${p}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${Ps(t,n)}
    ${l?s`<p class="alarm" role="status">${hg(l.field)}${l.line}</p>
            ${yi(S(),l.keep,K)}`:u}`}var Ps=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function hg(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=on(fo()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var gg=200*2**20;async function qc(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),K("/name",e.name.replace(/\.\w+$/,"")),e.size>gg){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return b(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await al(e,o=>b(t,{share:o}));b(t,{share:1,upload:n.file}),await Kc(t)}catch(n){b(t,{complaint:n instanceof w?n.message:String(n)})}}async function Kc(e){let t=e.questions+1;b(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await ln({file:n,unit:o,role:i,up:r});t===e.questions&&b(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(t!==e.questions)return;let c=o?e.sizes:wg(l.complaint),p=c.length&&!o?void 0:fe(l.complaint);b(e,{sizes:c,complaint:p,is_measuring:!1})}}async function _g(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await nl({file:n,unit:o,up:i});t===e.questions&&b(e,{inspection:r})}catch(r){if(!(r instanceof w))throw r;t===e.questions&&b(e,{complaint:fe(r.complaint)})}}function $g(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(bg)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{_g(e)}}>List every defect of the mesh</button>`}var bg=({text:e})=>s`<li>${e}</li>`;function wg({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>v(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function As(e,t){b(e,t),Kc(e)}function Gc(e,t){let n=l=>{let c=l.target;qc(c.files?.[0]),c.value=""},o=l=>{l.preventDefault(),qc(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?yg(a.mesh,e,t):u}`}function yg(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!xs.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ae("Unit of the file's numbers",e.unit,i,r=>As(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?$g(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ae("Role",e.role??e.answer?.gauge.role,Ss,r=>As(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ae("Up",e.up??"",Rs,r=>As(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${Pn(e.answer)} ${vg(e,t,n)}`:u}`}var Yc=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function vg(e,t,n){let o=String(S().name??"").trim(),i=Ri(o),r=o&&!i&&!e.is_keeping;return s`${ks()} ${Ts(Yc(e))} ${Ps(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Vc(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>Vc(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Vc(e,t,n){b(e,{is_keeping:!0});try{let o=xg(e,await ll(e.upload,Tg(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await kg(o))return t(o);un(o,"mesh",D().title),await mo(n),b(e,{complaint:a.mould?.complaint?.line})}catch(o){b(e,{complaint:o instanceof w?o.message:String(o)})}b(e,{is_keeping:!1})}function xg(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=S();return{...i,...Yc(e)||o===void 0?{}:{cavities:o},mesh:n}}async function kg(e){try{return await Ue({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof w&&t.status===422)return!1;throw t}}var Tg=e=>nn(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Mi={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Qc={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Zc(e){mt();let t={...Qc,shape:Di("block")};e==="mesh"?un(Qc,"mesh",Mi[e]):un(e==="water"?{...t,water:vs}:t,"form",Mi[e]),Fi()}async function Xc(e,t){mt(),await Ul(e,t),Fi()}async function Oi(e){mt(),await Hl(e),Fi()}function Sg(e){un(e,"form","More about this mould"),Fi()}function Fi(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function ep(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?Gc(e,Sg):Hc(e)}
  </section>`}var Ds=()=>f({chosen_mould:void 0});function ho(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:t};f({chosen_mould:i}),Rg(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Rg(e){try{let[t,n]=await Promise.all([ln({file:e.file}),oe(e.file)]);b(e,{answer:t,owned:e.shipped?1:Number(V(n.text)?.owned??1)})}catch(t){b(e,{complaint:t instanceof w?t.message:String(t)})}}var Pg=e=>a.files?.moulds.find(t=>t.file===e);function tp(e,t){let n=()=>t(async()=>{await Xc(e.file,e.shipped),Ds()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${vi(Pg(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Pn(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:Ag(e,t)}
    </div>
  </section>`}async function np({name:e,mould:t,formula:n}){let o=a.files?.moulds.some(c=>c.file===t&&!c.shipped),[i,r]=await Promise.all([Ue({file:t}),o?oe(t):void 0]),l=Number(V(r?.text??"")?.owned??1);await Vr({name:e,mould:t,formula:n,...op(i,l)})}function Ag(e,t){let n=o=>()=>t(()=>Vr({mould:e.file,name:e.name,formula:o,...op(e.answer.gauge,e.owned)}));return s`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>s`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function op(e,t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}var Gt={pour:"base",pipe:"topping",apart:"formula"},Dg=[...Xn,...eo,...Object.values(Gt),"describing","chosen"];function go(){let{view:e,run:t,formula_of:n,formulas:o,mould:i,chosen_mould:r}=a;if(e!=="reading")return Je(e)?{name:e,file:t.file,of:t}:e==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:e==="moulds"&&r?{name:"chosen",file:r.file,of:r}:e!=="formula"?{name:e}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:Gt[n],file:t.file,of:t}}var Ge=({name:e,file:t})=>`#${e}${t?`/${t.split("/").map(encodeURIComponent).join("/")}`:""}`;function Ms(e){let[t,...n]=e.slice(1).split("/");if(Dg.includes(t))try{return{name:t,file:n.map(decodeURIComponent).join("/")||void 0}}catch{return}}function rp(e){if(!e)return{};let t=e.name;return Je(t)?{run:e.file,view:t}:{run:e.name===Gt.pour||e.name===Gt.pipe?e.file:void 0,view:Se(t)?t:"reading"}}async function sp({name:e,file:t}){if(!(!(e===Gt.apart&&a.formulas.apart?.file===t)&&!await Kr()))try{await Mg(e,t)}catch(o){if(!(o instanceof w||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function Mg(e,t=""){let n=e;if(Je(n))return ip(t,n);let o=["pour","pipe"].find(i=>Gt[i]===e);if(o)return await ip(t,"formula"),gt(o);if(e===Gt.apart)return ro(t);await Og(e,t)}async function ip(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await ht(e,t)}async function Og(e,t){let n=e;Ds(),mt(),f({view:Se(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=zo(Te).find(i=>i.id===t);e==="describing"&&o&&await Oi(o),e==="chosen"&&ho(t),Fg()}async function Fg(){try{f({files:await it()}),ti()}catch(e){if(!(e instanceof w))throw e;f({list_complaint:e.message})}}var ye={id:""},ue,Os=!1,Ls=new Map,Li=JSON.parse(sessionStorage.getItem("left")??"{}");function lp(){let e=go();Os||!e||ue&&Ge(ue)===Ge(e)||(Ei(),up(e))}function up(e){let t=!ue||ue.name===e.name&&ue.of!==void 0&&ue.of===e.of;if(ue=e,t)return Dn();ye={id:crypto.randomUUID(),before:location.hash},Ls.set(ye.id,e.of),history.pushState(ye,"",Ge(e)),requestAnimationFrame(Eg)}function Dn(){ue&&(ye.id||(ye={id:crypto.randomUUID()}),Ls.set(ye.id,ue.of),history.replaceState(ye,"",Ge(ue)))}var Lg="button, input, select, summary, a[href], [tabindex]",Fs=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),cp=e=>[...document.querySelectorAll(`#main :is(${Lg})`)].filter(t=>Fs(t)===e);function Ei(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Li[ye.id]={scroll:scrollY}:Li[ye.id]={scroll:scrollY,words:Fs(e),nth:cp(Fs(e)).indexOf(e)}}function Eg(){scrollTo(0,0),document.activeElement?.closest("#main")||pp()}function pp(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function dp(){let{scroll:e,words:t,nth:n=0}=Li[ye.id]??{scroll:0},o=t===void 0?void 0:cp(t)[n];o?o.focus({preventScroll:!0}):pp(),scrollTo(0,e)}var Ci=e=>mp({name:e,file:Je(e)?a.run.file:void 0});async function mp(e){Ei(),await Es(e,()=>{let t=go();t&&!(ue&&Ge(ue)===Ge(t))&&up(t)})}async function Es(e,t){Os=!0;try{await sp(e)}finally{Os=!1,t()}}function fp(e){ye.before===Ge(e)?history.back():mp(e)}var ap=Promise.resolve();function Cg(e,t){Ei();let n=()=>history.state?.id!==e?.id;ap=ap.then(async()=>{if(!t)return Dn();if(n())return;let o=e?Ls.get(e.id):void 0,i=[a.run,a.formulas.apart].find(r=>r&&r===o);await Es(i?{...t,file:i.file}:t,()=>{ue=go(),!n()&&(ye=e??{id:crypto.randomUUID()},Dn(),requestAnimationFrame(dp))})})}function hp(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Ha()||Cg(e.state,Ms(location.hash))}),addEventListener("pagehide",()=>{Ei(),sessionStorage.setItem("left",JSON.stringify(Li))})}async function gp(){let e=Ms(location.hash);e&&(ye=history.state??{id:""}),await Mu(rp(e)),e&&Ig(e)&&await Es(e,()=>{ue=go(),Dn(),requestAnimationFrame(dp)}),await Ou()}var Ig=e=>!ue||Ge(ue)===Ge(e);function Ii(){let e=a.complaint;return s`<div class="complaints" role="status">
    ${e?s`<p class="alarm">
              <strong>${a.plan?"The figures below are out of date.":"No figures yet."}</strong>
              ${Cs(e.field)}${fe(e)}
            </p>
            ${e.is_fault?s`<button type="button" @click=${Is}>Ask again</button>`:u}
            ${Jt("run")?yi(a.run.now,e.keep,(t,n)=>X("run",t,n)):u}
            ${Bg()?s`<button type="button" @click=${jg}>Go to the field</button>`:u}`:u}
  </div>`}function Cs(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Is(){Z(),a.run.failed&&Oe()}function Bg(){if(_p())return!0;let e=qt();return e?document.activeElement!==e:Wg()}var Wg=()=>a.view!=="set-up"&&Jt("run")&&a.complaint!==void 0&&a.complaint.field!=="",_p=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&Jt(e));function jg(){let e=qt(),t=_p();if(e)return ci(e);t?gt(t):Ci("set-up"),Ng(()=>ci(qt()))}function Ng(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var $p=()=>[...Qo().map(e=>vn(e)),...Yo().map(xn)];function bp(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${$p()}${Ii()}
      <p>Reading the formula ...</p>
      ${Ws(e)}`;let n=a.plan&&hn(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${$p()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Ug(e)}</p>
    <div class="choice">${Ws(e)}${e==="apart"?Hg():u}</div>
    ${xi(a.files?.formulas.find(i=>i.file===t.file))} ${zg(e,o,n)} ${Kg(e)}
    ${gc(e)} ${wc(e,o)} ${vc(e)} ${ic(e)}
    <div class="choice">${Ws(e)}</div>`}var Bs=()=>String(a.run.now.name??a.run.file);function Ug(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${Bs()}".${n}`:o?`Base and topping of "${Bs()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Bs()}".${n}`}function Ws(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>fp(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function Hg(){return s`<button type="button" @click=${()=>{Gr("pour")}}>Use it as the base</button> ${Ie()?s`<button type="button" @click=${()=>{Gr("pipe")}}>Use it as the topping</button>`:u}`}function zg(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...Jg(e,n),...qg(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?Nu(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Vg(e)}
  </section>`}function Jg(e,t){let n=e==="pipe"?Qr(t,t.whippings[0]):"";return n?[["For one whipping",n]]:ee(t.whole)?[["For one batch",Le(t.whole,t.batch)]]:[]}function qg(e,t){let n=Ht(e).length?" \u26A0":"";return[["Fats",P(O(a.units,t.fats_g))],["Superfat as weighed",`${et(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...yn(t).map(({one:o})=>[o.name,P(tt(a.units,o))])]}function Vg(e){let t=a.complaint;if(!t)return s`<div role="status"></div>`;let n=Jt(e),o=n&&t.field!==""&&document.activeElement!==qt();return s`<div role="status" class="asks">
    <p class="alarm">
      <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${Cs(t.field)}${fe(t)}
    </p>
    ${t.is_fault?s`<button type="button" @click=${Is}>Ask again</button>`:u}
    ${o?s`<button type="button" @click=${()=>qt()?.focus()}>Go to the field</button>`:u}
  </div>`}function Kg(e){return s`<section class="card" aria-label="Name">
    ${d({label:"Name",of:e,at:"/name",wide:!0})}
    ${R({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>d({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var _o=[],$o=()=>_o.at(-1);function js(e){_o=[..._o,e],f({list_told:e.words}),ie(e.words)}async function vp(){let e=$o();e&&(await e.undo(),_o=_o.slice(0,-1),f({list_told:""}),ie("Undone"),await Mn())}var Mn=async()=>f({files:await it()});async function xp(e,t){let{$schema:n,...o}=JSON.parse((await oe(t.file)).text),i=`${t.name||t.file}, copy`,r={...o,name:i,...e.name==="run"?{id:crypto.randomUUID()}:{}},{file:l}=await ct({kind:e,name:e.new_name(qn(e,r)),text:Q(r),from:t.file});return await Mn(),js({words:`Copied ${t.name||t.file}.`,undo:async()=>{await lr(l,!0)}}),l}var kp=e=>/(\.(run|formula))?\.json$/.exec(e)?.[0]??"",bo=e=>Ct(e).slice(0,-kp(e).length||void 0),Tp=(e,t)=>Et(e)+t+kp(e),wp=e=>[a.run,...te.map(t=>a.formulas[t])].find(t=>t?.file===e);async function Sp(e,t,n){let o={name:t.name,note:t.note,stem:bo(t.file)};await yp(e,t.file,n),await Mn();let i=Tp(t.file,n.stem);js({words:`Changed ${n.name||i}.`,undo:()=>yp(e,i,o)})}async function yp(e,t,{name:n,note:o,stem:i}){let r=wp(t),l=r??await ze(e,t),{note:c,...p}=l.now,m=o?{...p,name:n,note:o}:{...p,name:n};if(Q(m)!==Q(l.now)&&(r&&Nt(),ge(l,m),await jt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let h=Tp(t,i);if(h===t)return;let{renamed_in:$}=await Ya(t,h);r&&Rl(r,h);for(let k of $){let A=wp(k);A&&await Pl(A)}}async function Rp(e,t){let{removed:n}=await lr(e.file,t);a.run.file===e.file&&No(),await Mn(),js({words:`Removed ${e.name||e.file}.`,undo:async()=>{await Qa(n)}})}async function de(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof w&&await Mn().catch(()=>{})}}var Ns=()=>{de(vp)};function On(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&$o()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Ns}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Pp=new Map,Ap=Promise.resolve();function Dp(e,t=""){let n=`${e}
${t}`,o=Pp.get(n);return o||(o=Ap.then(()=>Gg(e)),Ap=o,Pp.set(n,o)),o}async function Gg(e){try{let t=await rt({kind:"glb",gauge:{file:e}}),n=an(await t.arrayBuffer());return Gn(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof w)return;throw t}}var Us=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Dp(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void We(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,c=.04*Math.max(o-n,r-i),p=[n-c,-r-c,o-n+2*c,r-i+2*c];We(s`<svg viewBox=${p.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Kn(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Us);function Fn(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{de(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>Yg(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?Qg(e,r):u}
  </li>`}function Yg({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:bo(n)}:void 0})}function Qg(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{de(()=>Xg(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&bo(o.file)===t.stem,l=()=>{de(()=>e_(e,t))};return s`<div class="acts">
    ${vi(o)} ${Hs("Name",t,"name")} ${Hs("Note",t,"note")}
    ${Hs("Name of the file",t,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${r||!t.name.trim()||!t.stem.trim()}
        @click=${l}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{de(()=>Mp(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?Zg(o,t):u}
  </div>`}function Hs(e,t,n){let o=`list-${n}`,i=r=>b(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${J(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Zg(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{de(()=>Mp(e,t,!0))}}>Remove it even so</button>
  </div>`}async function Xg(e,t){let n=await xp(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:bo(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function e_({kind:e,one:t},{name:n,note:o,stem:i}){await Sp(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function Mp(e,t,n){let o=e.used_by??[];if(o.length&&!n)return b(t,{used_by:o});try{await Rp(e,n),f({list_open:void 0})}catch(i){let r=i instanceof w?i.answer.used_by:void 0;if(!r)throw i;b(t,{used_by:r})}}var zs=e=>b(a.new_formula,e);function Op(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>de(async()=>{await i(e.trim()),zs({name:"",copied:""})});return s`${On("Formulas")}
    <section aria-label="Formulas">
      <ul class="cards">
        ${n.map(t_)}
      </ul>
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${J(e)}
            @input=${i=>zs({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(Fu)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>zs({copied:i.target.value})}
          >
            <option value="" .selected=${J(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${J(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Lu(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function t_(e){let t=e.changed?[`changed ${wn(e.changed)}`]:[];return Fn({kind:rn,one:e,facts:t,open:()=>ro(e.file)})}function n_(e){mt(),ho(e,`Saved in ${e}.`)}function Lp(){let{chosen_mould:e}=a;return s`${On("Moulds")}
  ${e?tp(e,de):ep(n_)??s`${i_()} ${o_()}`}`}function o_(){let e=(a.files?.moulds??[]).filter(t=>!t.shipped);return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${e.map(t=>Fp(t,a_(t.file)))}${a.catalogue.map(t=>Fp({file:t.path,name:t.name,note:"",shipped:!0},[`${P(ne(a.units,t.brimful_ml))}, ${q(t.cavities,"cavity","cavities")}; ${t.description}`]))}
    </ul>
  </section>`}var Fp=(e,t)=>Fn({kind:Te,one:e,facts:t,picture:e.file,open:()=>Promise.resolve(ho(e.file))});function i_(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${r_()}
    <div class="choice">
      ${Object.entries(Mi).map(([e,t])=>s`<button type="button" @click=${()=>Zc(e)}>${t}</button>`)}
    </div>
  </section>`}function r_(){return zo(Te).map(e=>{let t=String(V(e.text)?.name??"").trim()||s_(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>de(()=>Oi(e))}>Continue</button>
        <button type="button" @click=${()=>{Wt(Te,e.id),Ae()}}>Discard it</button>
      </div>
    </div>`})}var s_=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function a_(e){let t=uu(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[P(ne(a.units,t.brimful_ml)),q(t.cavities,"cavity","cavities")]:["measuring ..."]}function Ep(){let e=l_();if(e)return e;let{run:t}=a,n=a.formula_of==="apart"||!(j(t)||t.theirs||t.failed);return a.view==="formula"&&n?u_():t.theirs?Bi(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`):t.failed?Bi(`Not saved: ${t.failed}`):j(t)?Ip:Js(t.shipped?Cp:`Saved in ${t.file}`)}var Cp="Built-in example: your first change is saved as a copy.",Ip={words:"Saving ...",is_kept:!1},Js=e=>({words:e,is_kept:!0}),Bi=e=>({words:e,is_kept:!1,is_failed:!0});function l_(){let e=a.formulas.apart?"apart":"run",t=Xe(e);if(t)return Bi(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&j(o)))return a.complaint?.file===""?Bi(`Not saved: ${a.complaint.problem}`):Ip}function u_(){let e=a.formulas[a.formula_of];return Js(e?e.shipped?Cp:`Saved in ${e.file}`:"")}function Wi(){let{view:e,mould:t,past:n,future:o}=a;return e==="moulds"&&t?Bp(t,zl,Jl):Se(e)?{undo:$o()&&Ns}:Bp({past:n,future:o},Ko,Ol)}var Bp=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Wp={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},c_={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},p_="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",d_="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",qs=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${M`<path d=${e} />`}</svg>`;function jp(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${Xn.map(t=>Np(t,Wp[t],s`${Wp[t]}`))}
              </nav>
              ${f_()}`}
    </div>
    ${e?u:h_()}
  </header>`}var m_={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`};function f_(){let e=t=>()=>{f({units:t}),localStorage.setItem("units",t)};return s`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${e(t)}>
          ${m_[t]}
        </button>`)}
  </div>`}function h_(){let{undo:e,redo:t}=Wi();return s`<div class="bar">
    ${a.run.file?g_():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${qs(p_)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${qs(d_)}<span>Redo</span></button>
    </div>
    ${a.run.file?w_():u}
  </div>`}function g_(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${eo.map(__)}</div>
  </nav>`}function __(e){let[t,n]=c_[e],o=$_(e);return Np(e,o?`${t}, ${o.words}`:t,s`${qs(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function $_(e){if(e==="watch"&&Ru())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="set-up"&&b_())return{sign:"\u25CB",words:"missing"}}var b_=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Np(e,t,n){let o=a.view===e;return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{Ci(e)}}
  >
    ${n}
  </button>`}function w_(){let{words:e,is_kept:t,is_failed:n}=Ep();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}function Ks(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!Ie()?u:s`${os(e,"Make one pot of lye solution for both",t,{})}
  ${t?d({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Up(){return s`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${Ks()} ${Gs()} ${Ys()}
  </section>`}function Gs(e){let t={at:"/bottles"},n=T(t);return R({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${e&&_e(e)?` Weights are of ${_e(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${L(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${U(t,i,l)}
            </div>
            ${E("run",r)}
            <div class="row">
              ${d({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${d({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?y_(e,i,l):u}
          </div>`})}
        ${B(t,"Use up a bottle",()=>I(t,{name:"",holds:""},"bottle"))}`})}function y_(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>x({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${v(i.percent_of_batter,2)} % of the batter`,shown:z(a.units,pe(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}function Ys(){return be({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:v_})}function v_(){let e=g("run","/label/market"),t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${y({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:e,answers:[["EU","In the EU"],["US","In the US"]],puts:x_})}
  ${y({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:k_})}
  ${t==="weighed"?T_():s`<div class="row">
          ${d({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${d({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${d({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${e==="EU"||g("run",Vs)!==void 0?os(Vs,"With the e mark",g("run",Vs)===!0,!0):u}`}var Vs="/label/e_mark";function x_(e){return{...H("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function k_(e){let t=H("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function T_(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${T(e).map((t,n)=>s`<div class="row" id=${L(e,n)}>
            ${d({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${U(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${B(e,"One more piece",()=>I(e,"","piece"))}`}function Hp(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,c=r?"A bar on average, ":"",p=m=>c?c+m.toLowerCase():m;return s`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${x({key:"piece.fresh",label:p("Fresh"),shown:O(a.units,n),of:"piece.fresh_g"})}
    ${o===null?u:x({key:"piece.cured",label:p("Cured"),shown:O(a.units,o),of:"piece.cured_g"})}
    ${r?x({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:O(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
    ${i===null?u:x({key:"piece.label",label:"Net weight for the label",shown:O(a.units,i,0),of:"piece.label_g"})}
    ${l?x({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(m=>v(m,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
    ${t&&t.amount!==null?s`${x({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
          ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${R_(e)} ${S_(e)} ${Ys()}
  </section>`}function S_(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}function R_(e){let t=e.piece.cost?.materials.map(o=>o.name)??[];if(!t.length)return u;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return R({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>s` ${t.map(o=>s`<div class="row">
            ${d({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${d({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}var[Jp,Zs]=[440,270],[wo,Qs,ji,Ln]=[64,Jp-10,10,Zs-52],P_=6,A_=8;function zp(e){let t=e/P_,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var En=e=>v(e,1);function qp(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=c=>En(wo+(Qs-wo)*c/n),r=c=>En(Ln-(Ln-ji)*c/o),l=e.map(({depth_mm:c,volume_ml:p})=>`L${i(c)} ${r(p)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Jp} ${Zs}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${zp(n).map(c=>M`<path class="grid" d="M${i(c)} ${ji}V${Ln}" />
            <text x=${i(c)} y=${Ln+20} text-anchor="middle">${En(c)}</text>`)}
      ${zp(o).map(c=>M`<path class="grid" d="M${wo} ${r(c)}H${Qs}" />
            <text x=${wo-8} y=${r(c)} text-anchor="end" dominant-baseline="middle">${En(c)}</text>`)}
      ${M`<text x=${(wo+Qs)/2} y=${Zs-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(ji+Ln)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${ji}V${Ln}" />`}
    </svg>
    ${D_(e)}`}function D_(e){let t=Math.max(1,Math.round(e.length/A_)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${En(o)}</th>
              <td>${En(i)}</td>
              <td>${v(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ni=Math.PI/8,M_=500,Xs=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#a="";#l="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#a="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#d()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#p()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#d()},M_))}#p(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#d(){let t=this.#p();if(t!==this.#a){try{let n=await rt(JSON.parse(t));if(t!==this.#p()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(an(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof w))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Drawing ...",this.#u(),this.#d()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#l}</p>`;We(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Ni)}>Turn left</button>
        <button type="button" @click=${t(Ni)}>Turn right</button>
        <button type="button" @click=${n(Ni)}>From above</button>
        <button type="button" @click=${n(-Ni)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Xs);function Vp(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${x({key:"mould.brimful",label:"To the brim",note:`${P(re(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ne(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${qp(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${O_(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function O_(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var Cn=e=>b(a.printing,e);function Kp(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function Gp(e){if(!a.printing.is_working){Cn({is_working:!0,told:"Making it ..."});try{await F_(),Cn({told:await e()})}catch(t){Cn({told:t instanceof Error?t.message:String(t)})}Cn({is_working:!1})}}async function F_(){await cn();let e=Xe("run");if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var kt=(e,t)=>()=>Gp(async()=>{let n=URL.createObjectURL(await rt(t));return Kp(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),L_=e=>()=>Gp(async()=>(Kp(await sl(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),E_=e=>{Cn({paper:e}),localStorage.setItem("paper",e)},C_=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function Yp(e){let{batch:t}=a.printing;return ee(e)&&t<=e.pieces.batches?t:0}function I_(e){if(!ee(e))return u;let t=Yp(e),n=i=>Cn({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${J(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${C_(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Le(e,r)}`))}
      </select>
    </div>
  </div>`}function Qp(e){let{paper:t,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),r={file:a.run.file,run:a.run.now},l=a.measured?.mould,c={file:l,"below-brim":`${e.pour.below_brim_mm} mm`},p=Yp(e),m={plan:r,paper:t,...p?{batch:String(p)}:{}},h=($,k,A="")=>s`<button type="button" class=${A} ?disabled=${n} @click=${()=>{k()}}>${$}</button>`;return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${ae("Paper",t,[["A4","A4"],["Letter","Letter"]],E_)}
    ${I_(e)}
    <div class="choice">
      ${h("Bench sheet, to print",L_({kind:"sheet",...m}),"strong")}
      ${a.files?.makes_pdf?h("Bench sheet, PDF",kt(`${i}${p?` batch ${p}`:""}.pdf`,{kind:"sheet-pdf",...m})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?h("Label draft",kt(`${i} label.txt`,{kind:"label",plan:r})):""}
      ${h("Drawing of the pour, true size",kt(`${i} pour.svg`,{kind:"picture",plan:r}))}
      ${h("Drawing of the piece",kt(`${i}.svg`,{kind:"piece",plan:r}))}
      ${h("Whole piece, GLB (3D viewer)",kt(`${i}.glb`,{kind:"glb",plan:r}))}
      ${h("Whole piece, STL (3D printing)",kt(`${i}.stl`,{kind:"stl",plan:r}))}
      ${l?s`${h("Filled cavity, GLB (3D viewer)",kt(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${h("Cavity, STL (3D printing)",kt(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${P(re(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Zp=e=>Qp(e);var Pe={at:"/decorations"},Ui=e=>`${Pe.at}/${e}`,Yt=e=>N("run",`${Ui(e)}/name`).trim()||`Decoration ${e+1}`,me=()=>_(a.run.now,"/cut")!==void 0,Hi=e=>["mould","rod","drizzle"].find(t=>g("run",`${e}/${t}`)!==void 0),yo=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var ve="/batch",In="/pots",vo=e=>`${e}/moulds_owned`;function ea(){let e=[ve,In,vo("/pour")];return R({name:"batches",pointers:e,summary:`Batches, pots, moulds owned${B_()}`,body:()=>s` <p class="hint">What you leave blank sets no limit.</p>
        ${E("run",ve)} ${E("run",In)}
        <div class="row">
          ${d({label:"Moulds like this owned",at:vo("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${d({label:"Pot for the base holds",at:`${In}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${d({label:"Lye jug holds",at:`${In}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${W_()} ${N_()}
        </div>
        ${y({question:"Cavities at each filling",at:ve,asked_at:`${ve}/fill`,chosen:g("run",`${ve}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Xp("fill",t==="full"?t:void 0)})}`})}function B_(){let[e,t,n,o,i]=[`${ve}/pieces`,`${ve}/casts`,`${In}/holds`,`${In}/lye_jug`,vo("/pour")].map(l=>N("run",l)),r=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&q(Number(i),"mould")].filter(Boolean);return r.length?`: ${r.join(", ")}`:""}function Xp(e,t){let n=H("run",ve,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function W_(){let e=g("run",`${ve}/casts`)!==void 0,t=(n,o)=>d({label:o,at:`${ve}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return me()?g("run",`${ve}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${j_}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function j_(){Y("run","Counted in loaves",ve,Xp("pieces",void 0))}function N_(){let e=`${ve}/whippings`;return!Ie()&&g("run",e)===void 0?u:d({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var U_=500,ta=()=>_(a.run.now,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=U_;function H_(){Y("run","Cut it into bars","/cut",{bar:{},kerf:""},Vt(G("run","/cut/bar")))}function z_(){Y("run","Left whole","/cut",void 0,Re("cut-into-bars"))}function na(){return ta()?s`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${H_}>Cut it into bars</button>
  </div>`:u}var J_={loaf:{thickness:""},slab:{length:"",width:""}};function q_(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var V_={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function zi(){let e=q_(),t=(o,i)=>d({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=N("run","/cut/along");return s` ${y({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>J_[o]})}
    <div class="row">
      ${e==="loaf"?d({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>d({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${d({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?y({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:V_[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${z_}>Leave it whole</button>`}function Tt(e){let{whole:t,batch:n}=e,o=Cu(t,n);return s`<h3 class="batch-head of-plan ${gn(t)?"of-sizes":""}">
      One batch: ${Le(t,n)}${o?s`<span>, ${o}</span>`:u}
    </h3>
    ${gn(t)?s`<div class="sizes">
            ${ae("Which batch is weighed",String(Yr(t)),t.batches.map((i,r)=>[String(r),Le(t,i)+(i.count>1?`, ${so(i.count)}`:"")]),K_)}
          </div>`:u}`}function K_(e){let t=a.plan;f({batch:Number(e)}),ie(`One batch: ${Le(t,t.batches[a.batch])}`)}function ed(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(p=>`${gn(e)?`${p.count} of `:""}${Le(e,p)}`),l=`Made in ${t} batches${gn(e)?": ":" of "}${_n(r)}; ${oi(n,o)}.`,c=e.batch_limits.filter(p=>p.sets);return s`<div class="batches-told of-plan">
    ${ee(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${q(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?s`<p><span class="called">What sets a batch:</span> ${c.map(p=>p.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(p=>p.text).join(" ")}</p>`:u}
  </div>`}var nd=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function od(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(p=>!p.buried&&p.cavity_fills>0),r=i?sd(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,c=e.pipe?G_(e,t,n,l):0;return{brim:n,line:o,topping:c,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+c+l)}}function G_(e,t,n,o){let i=$n(_(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,c]=Sr(t,t.brim-.01),p=Math.PI/4*(c-l)**2;return 1500*e.pipe.visible_each_ml/p}function td(e,t){let[n,o]=Sr(e,e.brim-.01),i=(n+o)/2,r=3,l=h=>(o-n)/2*Math.sqrt(1-(h/(r+.3))**2),c=h=>-(t.brim+t.topping*h/r),p=(h,$,k)=>{let A=i+k*(Math.max(l(h),l($))+(o-n)*.035);return`C${A} ${c(h)} ${A} ${c($)} ${i+k*l($)*($?.94:1)} ${c($)}`},m=`M${n} ${c(0)}`;for(let h=0;h<r;++h)m+=p(h,h+1,-1);m+=`L${i+l(r)*.94} ${c(r)}`;for(let h=r;h>0;--h)m+=p(h,h-1,1);return`${m}Z`}var xo=(e,t)=>e===t?`shaded ${t}`:"plain";function Qt(e,t,n=u){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=od(t,o),r=o.right-o.left,l=Math.max(6,r*.1),c={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
      <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${i$(e,t)}>
        ${Y_(e)} ${Q_(e,t,o,i)} ${X_(e,t,o,i)} ${e$()}
        ${t$(e,t,o,i)} ${o$(e,t,o,i)}
        ${M`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${e==="decorate"&&oa(t)?s`<p class="hint">${oa(t)}</p>`:u}`}function id(e,t){let n=a.measured.outline,o=od(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function Y_(e){return M`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${nd(rd())} /></clipPath>
  </defs>`}function rd(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function Q_(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(c=>Z_(c,n)):[[o.line,o.line]]).map(([c,p])=>`M${n.left} 0V${-c}L${n.right} ${-p}V0Z`);return M`<g clip-path="url(#cavity-${e})">${l.map((c,p)=>M`<path class="whole" d=${c} /><path class="${xo(i,"pour")} band${p%3}" d=${c} />${i==="pour"&&p%2===0?M`<path fill="url(#hatch-${e})" d=${c} />`:u}`).reverse()}</g>`}function Z_(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function X_(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(_(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return M`<g clip-path="url(#cavity-${e})"><rect class=${xo(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function e$(){return M`<path class="wall" fill-rule="evenodd" d=${nd(rd())} />`}function t$(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((c,p)=>(c.buried?.embeds??[]).map(m=>({embed:m,one:c,i:p})))??[];return M`
    ${t.pipe?M`<path class=${xo(e,"pipe")} d=${td(n,o)} />${e==="pipe"?M`<path fill="url(#dots-pipe)" d=${td(n,o)} />`:u}`:u}
    ${o.ball?M`<circle class=${xo(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:c,one:p,i:m})=>n$(xo(e,"decorate"),i,c,p,m))}`}function n$(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],c=$n(_(a.run.now,`/decorations/${i}/rod/diameter`)),p=$n(_(a.run.now,`/decorations/${i}/rod/length`));if(!c||!p)return M`<circle class=${e} cx=${r} cy=${-l} r=${sd(o)} />`;let[m,h]=[n.turn[0][0],n.turn[2][0]],$=Math.min(1,Math.hypot(m,h)),k=c/2*Math.sqrt(1-$*$),A=p*$+2*k,F=-180/Math.PI*Math.atan2(h,m);return M`<rect class=${e} x=${-A/2} y=${-c/2} width=${A} height=${c} rx=${k} ry=${k?c/2:0}
    transform="translate(${r} ${-l}) rotate(${F})" />`}var sd=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function oa(e){let t=(e.decorations??[]).filter((n,o)=>_(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function o$(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return M`${Array.from({length:i-1},(r,l)=>{let c=n.left+(n.right-n.left)*(l+1)/i;return M`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function i$(e,t){let n=P(re(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${oa(t)}`.trim()}var r$={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Be={at:"/dust"},ia=e=>N("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function ad(){I(Be,{name:""},"Dust")}function s$(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function ld(e){let t=`/dust/${e}`,n=s$(t),o=ia(e),i=r=>({...H("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...r$[r]});return s` ${d({label:"Which powder",at:`${t}/name`})}
  ${y({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?d({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${d({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${d({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${d({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${wt("run",t,o)}`}var a$={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function l$(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function ud(e,t){let n=l$(e),o=i=>({...H("run",e,["on_top","buried"]),...a$[i]});return Hi(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:R({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${y({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?u$(`${e}/on_top`):n==="buried"?p$(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function u$(e){return s`<div class="row">
      ${d({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${d({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${cd(e,"It is turned")}`}function cd(e,t){let n=o=>d({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return R({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var c$=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function p$(e,t){let n=`${e}/buried`,o=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),i=g("run",`${n}/placed`);return s`${E("run",n)}
  ${d({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${y({question:"When is it set in?",at:`${n}/placed`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:r=>r})}
  ${y({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:o,answers:c$,puts:r=>d$(e,r)})}
  ${o==="said"?f$(e,t):u}`}var pd={x:"",y:"",height:""};function d$(e,t){let n=H("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${yo(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>pd);return{...H("run",e,["per_piece","per_cast"]),[dd(e)]:i.length,buried:{...n,places:i}}}var dd=e=>me()?"per_cast":yo(e)??"per_piece";function m$(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>W(r,`${e}/${l}`,void 0),n);return W(i,`${e}/${dd(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function f$(e,t){let n=m$(e),o=T(n);return s`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,c=p=>d({label:`Place ${r+1}: ${p}`,at:`${l}/${p}`,unit:"mm",short:!0});return s`<div class="part" id=${L(n,r)} role="group" aria-label="Place ${r+1} of ${Yt(t)}">
        ${E("run",l)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${U(n,r,`place ${r+1} of ${Yt(t)}`)}
        </div>
        ${cd(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${B(n,"Add a place",()=>I(n,pd,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var md=e=>`${e} made`;function h$(){let e=Ui(T(Pe).length),t=me()?{}:{per_piece:""};for(let n of[md(e),`${e} where`])oc("run",n);I(Pe,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Ji(){let[e,t]=[T(Pe).length>0,T(Be).length>0];return s`<div class="choice">
    ${B(Pe,e?"Add another decoration":"Add a decoration",h$)}
    ${B(Be,t?"Add another dust":"Add a dust",ad)}
  </div>`}function fd(e){let t=Ui(e);return s` ${E("run",t)} ${b$(t)}
    <div class="row">
      ${g$(t)} ${d({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${d({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${d({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
      ${d({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${ud(t,e)} ${wt("run",t,Yt(e))}`}function g$(e){let t=yo(e),n=ft("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(me()&&t==="per_piece"))return s``;let o=t==="per_cast"?me()?"In each loaf":"In each cast":me()?"On each bar":"On each piece",i=r=>({...H("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${me()?y({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?d({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var _$={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function $$(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...H("run",e,n),..._$[t]}}function b$(e){let t=Hi(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${e}/${o}`);return R({name:md(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${d({label:"What it is called",at:`${e}/name`})}
          ${d({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${y({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>$$(e,o)})}
        ${t?w$[t](e):u}
        ${d({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var w$={mould:y$,rod:e=>s`<div class="row">
      ${d({label:"Rod, across",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${d({label:"Rod, long",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${d({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${d({label:"Thick",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function y$(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${Tn("Cast in",`${e}/mould`,a.files?.moulds)}
  ${d({label:"Trays like this owned",at:vo(e),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${y({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?d({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):d({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${y({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var ko=()=>T(Pe).length+T(Be).length>0;function hd(){return s`<section class="lane unused" aria-label="Decorate">
    <h2>Decorate</h2>
    <p>Nothing is set on or in it${ta()?", and it is left whole":""}.</p>
    ${Ji()} ${na()}
  </section>`}function gd(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function _d(e){let t=T(Pe).flatMap((n,o)=>{let i=v$(e,o);return i?[{one:i,i:o}]:[]});return s`<div class="side">${t.map(({one:n})=>x$(e,n))} ${Qt("decorate",e)}</div>
    <div class="weights">
      ${t.map(({one:n,i:o})=>k$(e,n,o))}
      ${e.dust?.length&&T(Be).length?s`${ee(e.whole)?Tt(e):u}
              <h3>Weigh for dusting</h3>`:u}
      ${T(Be).map((n,o)=>S$(e,o))}
    </div>
    ${ra()}`}var v$=(e,t)=>gd(e.decorations,T(Pe),N("run",`/decorations/${t}/name`),t);function ra(){let e=(t,n,o,i)=>s`<section class="questions" id=${L(t,n)} aria-labelledby="${L(t,n)}-title">
      <div class="part-head">
        <h3 id="${L(t,n)}-title">${o}</h3>
        ${U(t,n,o)}
      </div>
      ${i}
    </section>`;return s`<div class="all-questions">
    ${T(Pe).map((t,n)=>e(Pe,n,Yt(n),fd(n)))}
    ${T(Be).map((t,n)=>e(Be,n,ia(n),ld(n)))} ${Ji()} ${na()}
  </div>`}function x$(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"";return s`<p class="order ${a.is_old?"old":""}">
    Cast <b>${t.casts}</b> of ${t.name} ahead${n}${ee(e.whole)?", for the whole run":""}.
  </p>`}function k$(e,t,n){return s`<h3>
      Weigh for ${t.name} ${ee(e.whole)?s`<small>for the whole run</small>`:u}
    </h3>
    ${x({key:`decorations.${n}.make`,label:`Melt of ${t.material}`,shown:z(a.units,pe(t,"make_")),size:"weigh",of:`decorations.${n}.make_g`})}
    ${x({key:`decorations.${n}.each`,label:"Each weighs",note:`${v(t.volume_each_ml,2)} ml`,shown:O(a.units,t.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${_t(t.casting_s)} of casting.</p>`:u} ${T$(t,n)}`}function T$(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":P(re(a.units,l)),r=l=>{let c=(o?.embeds??[]).map(l).filter(p=>p!==null);return c.length?P(re(a.units,Math.min(...c))):"none near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${v(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Kt(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function S$(e,t){let n=gd(e.dust,T(Be),N("run",`/dust/${t}/name`),t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=x({key:`dust.${t}`,label:n.name,shown:z(a.units,pe(n,"")),size:"weigh",of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:u}`}function $d(e){let{cut:t}=e;return s`<div class="side">
      ${t?s`<p class="order ${a.is_old?"old":""}">
              Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}.
            </p>`:u}
      ${Qt("cut",e)}
    </div>
    <div class="weights">
      ${t?s`${x({key:"cut.bar",label:"A bar on average, fresh",note:R$(t),shown:O(a.units,e.piece.fresh_g),size:"weigh",of:"cut.bars_each"})}
            ${x({key:"cut.offcuts",label:"Offcuts",shown:O(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
            ${P$(t)}`:u}
    </div>
    <div class="all-questions">${zi()} ${ko()?u:Ji()}</div>`}function R$(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${v(n,1)} to ${v(o,1)} g`}function P$(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>At ${t.size_text} ${t.direction} it gives ${t.bars} bars.</li>`)}
  </ul>`:u}var Rt="/pour/layers",St={at:Rt,in_order:!0},sa=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Vi=()=>T(St);function A$(){let e=t=>Vi().some(n=>t in n);return sa.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function aa(e){let t=Vi(),n=A$();return t.length?s`<h3>
      Layers, lowest first ${e&&_e(e)?s`<small>${_e(e)}</small>`:u}
    </h3>
    ${y({question:"All of them by",at:Rt,is_told_elsewhere:!0,chosen:n,answers:sa,puts:o=>M$(o,e)})}
    <div class="items">${t.map((o,i)=>O$(o,i,n,e))}</div>
    ${B(St,"One more layer on top",()=>I(St,{name:D$(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${B(St,"Pour it in layers",()=>I(St,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function D$(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function bd(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function M$(e,t){let n=Vi(),o=a.is_old?void 0:t,i=(r,l)=>{let c=bd(o,r,l);return e==="parts"||!c||e==="depth"&&"tilted"in r?"":e==="depth"?`${v(c.to_mm-c.from_mm,3)} mm`:`${v(c.mass_each_g,3)} g`};return n.map((r,l)=>{let c=qi(l),p=e!=="parts"&&n.length>1&&l===n.length-1;return{...c,...p?{rest:!0}:{[e]:i(r,l)}}})}var qi=e=>H("run",`${Rt}/${e}`,[...sa.map(([t])=>t),"rest"]);function O$(e,t,n,o){let i=`${Rt}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=bd(o,e,t);return s`<div class="part" id=${L(St,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?F$(o,l,t):s`<p class="part-title">${r}</p>`} ${E("run",i)}
    ${E$(e,t,n,r)}
    ${o&&l?l.colours.map((c,p)=>L$(o,c,t,p)):u}
    ${R({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, prop",body:()=>s` ${d({label:"Name of the layer",at:`${i}/name`})} ${W$(i,r)} ${N$(i,t)}
        ${U(St,t,r)}`})}
  </div>`}function F$(e,t,n){return x({key:`pour.layer.${n}`,label:t.name,note:`${Xr(re(a.units,t.to_mm-t.from_mm))} thick, ${Xr(O(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?O(a.units,t.g):z(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function L$(e,t,n,o){return x({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${v(t.teaspoons,1)} tsp`:"",shown:tt(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function E$(e,t,n,o){if(n==="parts")return C$(e,t,o);let i="rest"in e;return s`${i?u:d({label:`${o}, ${n}`,at:`${Rt}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?B$(t,n):I$(t,n)}
    >
      takes the rest
    </button>`}function C$(e,t,n){let o=`${Rt}/${t}/parts`,i=r=>()=>{f({typed:void 0}),X("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${d({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function I$(e,t){let n=Vi().map((o,i)=>i===e?{...qi(i),rest:!0}:o.rest?{...qi(i),[t]:""}:o);Y("run","takes the rest",Rt,n)}function B$(e,t){let n=`${Rt}/${e}`;Y("run","amount of the layer",n,{...qi(e),[t]:""},bt("run",`${n}/${t}`))}function W$(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${T(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${L(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${U(n,i,l)}
      </div>
      ${E("run",r)}
      <div class="row">
        ${d({label:"Colour",at:`${r}/name`})}
        ${d({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${d({label:"Weight of a loose ml",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${wt("run",r,l)}
    </div>`})}
  ${B(n,"Add a colour",()=>I(n,{name:"",rate:""},"colour"))}`}var j$=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function N$(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===T(St).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:be({at:n,name:"the prop",title:"The mould is tilted",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>s`${d({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${y({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:j$,puts:r=>r})}
        ${d({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var ot=()=>_(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function la(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=ot()==="depth"?n-o:o;f({typed:void 0}),X("run",`/pour/line/${ot()}`,`${v(i,2)} mm`)}function wd(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=$n(_(a.run.now,`/pour/line/${ot()}`));return n===void 0?e.pour.below_brim_mm:ot()==="depth"?t-n:n}function U$(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function H$(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=wd(e),{share:o,h:i}=id(e,t-n),r=p=>U$(p,m=>la(e,n+m*i)),l=p=>{let m={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[p.key];m!==void 0&&(p.preventDefault(),la(e,n+m))},c=p=>p&&(p.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${v(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${P(re(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function z$(e){let{pour:t}=e,n=P(re(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each";return s`<p class="order ${a.is_old?"old":""}">
    ${o}, <b>${P(O(a.units,t.mass_each_g))}</b> ${i}.
  </p>`}function yd(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>la(e,wd(e)+i);return s`<div class="side">
      ${z$(e)} ${Qt("pour",e,H$(e))} ${xd(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${d({label:ot()==="depth"?"Deep":"Below brim",at:`/pour/line/${ot()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${x({key:"pour.mm",label:"1 mm is",shown:ne(a.units,t.ml_per_mm,2),note:`${qe(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${x({key:"pour.each",label:"Weigh into each",shown:O(a.units,t.mass_each_g),size:"weigh",note:`${v(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
    </div>
    <div class="weights">
      ${Tt(e)} ${ua("pour","Weigh for the base",t.formula)} ${ca(t,n,"pour")}
      ${x({key:"pour.make",label:"Base to make",shown:O(a.units,t.make_g),size:"weigh",of:`${n}.make_g`})}
      ${x({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>
    <div class="more">${aa(e)} ${po("pour")}</div>`}function vd(){let e=ot();return s`<div class="side">
      ${xd()} ${E("run","/pour/line")}
      ${d({label:e==="depth"?"Deep":"Below brim",at:`/pour/line/${e}`,unit:"mm"})}
    </div>
    <div class="more">${aa()} ${po("pour")}</div>`}function xd(e){let t=n=>{if(n===ot())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;Y("run","pour line","/pour/line",{[n]:o===void 0?"":`${v(o,3)} mm`})};return ae("The pour line is measured",ot(),[["below_brim","From the brim"],["depth","From the floor"]],t)}function J$(e){return e.teaspoons?`about ${v(e.teaspoons,1)} tsp`:""}function q$(e){let t=e.set_aside_for_colours_g?`${P(z(a.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[J$(e),t].filter(Boolean).join(", ")}function ua(e,t,n){return s`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>gt(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function ca(e,t,n){return s`${li(e).map(({one:o,i})=>pa(o,i,t,n))}`}function pa(e,t,n,o){return x({key:`${o}.${t}`,label:e.name,note:q$(e),shown:tt(a.units,e),size:"weigh",of:`${n}.ingredients.${t}.g`})}var V$=[0,50,80,100];function kd(e){let{pipe:t}=e;return t?s`<div class="side">
      <p class="order ${a.is_old?"old":""}">
        Pipe <b>${v(t.volume_each_ml,0)} ml</b> on each, ${P(O(a.units,t.mass_each_g))} at this
        whip.
      </p>
      ${Qt("pipe",e)}
      ${x({key:"pipe.each",label:"Topping on each",shown:ne(a.units,t.volume_each_ml),note:`${v(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${G$(e)} ${Rd()} ${eb(e)}
    </div>
    <div class="weights">
      ${Tt(e)} ${ua("pipe","Weigh for the topping",t.formula)}
      ${e.whippings.map((n,o)=>K$(e,n,o))}
      ${x({key:"pipe.density",label:"Whipped density",note:`overrun ${v(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`})}
      ${bs(t)}
    </div>
    <div class="more">${$s(t)} ${_s()}</div>`:ma()}var To=e=>e===0?"pipe":`pipe.whipping${e}`,Zt=(e,t)=>`${e.place}.pipe.whippings.${t}`;function da(e,t){let n=ao(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function K$(e,t,n){let o=To(n);return s`${da(e,t)} ${ca(t,Zt(e,n),o)}
  ${x({key:`${o}.make`,label:"Topping to make",note:ao(e,t),shown:O(a.units,t.make_g),size:"weigh",of:`${Zt(e,n)}.make_g`})}`}function ma(){return s`<div class="more">${$s()}</div>
    <div class="side">${Rd()} ${g("run","/pipe/whip_now")===void 0?u:Sd()}</div>
    <div class="weights">${bs()} ${Cc()}</div>
    <div class="more">${_s()}</div>`}var Td=e=>_e(e)?s`<small>${_e(e)}</small>`:u;function G$(e){return s`<h3>This bowl, now ${Td(e)}</h3>
    ${Sd()} ${e.whippings.map((t,n)=>Y$(e,t,n))}`}function Y$(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whip.`:`Enough for the ${t.pieces} to make.`;return s`${da(e,t)}
  ${o==null?u:x({key:`${To(n)}.now`,label:"This bowl pipes now",note:r,shown:[q(o,"piece"),""],size:"weigh",of:`${Zt(e,n)}.pieces_now`})}
  ${Z$(e,t,n)}`}function Sd(){let e={holds:g("run","/pipe/whip/holds")??"",net:""};return be({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:Q$})}function Q$(){return s`<div class="row">
    ${d({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${d({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function Z$(e,t,n){return t.readings?.length?s`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${t.readings.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${v(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${v(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Kt(`${To(n)}.readings`,"Show the calculation",`${Zt(e,n)}.readings`)}`:u}function Rd(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(N("run",e))?.[1]?.replace(",",".")),n=Ve("run",e);return s`<h3 id="recess">How much of the headspace below the brim does the topping fill?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${V$.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>X("run",e,`${o} %`)}
          >
            ${X$(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${d({label:"Or as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function X$(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${M`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function eb(e){let t=e.whippings.map(i=>({one:i,words:tb(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${Td(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${da(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Kt("pipe.limits","How the limits come about",`${Zt(e,0)}.limits`)}`}function tb({piping_s:e,lye_spoonfuls:t}){return[e?`${_t(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${_t(t.altogether_s)}`:""].filter(Boolean).join("; ")}function Ad(e){if(!Bu(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=ee(t)?`${q(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Pd(e,"pour","The base, whole run")}
      ${t.pipe?Pd(e,"pipe","The topping, whole run"):u} ${nb(e)}
    </div>
  </section>`}function Pd(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...li(i),...yn(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:c})=>Ki(`${t}.ingredients.${c}.g`,l.name,tt(a.units,l)))}
    ${Ki(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",O(a.units,i.make_g))}
  </div>`}var Ki=(e,t,n)=>x({key:`needs.${e}`,label:t,shown:n,of:e});function nb(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((c,p)=>({layer:r,one:c,i:l,j:p}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>z(a.units,pe(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:c,j:p})=>Ki(`pour.layers.${c}.colours.${p}.g`,`${l.name}, for ${r.name}`,tt(a.units,l)))}
    ${o.map((r,l)=>Ki(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function Gi(e){return s`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye</h2>
    ${Tt(e)}
    <div class="jugs">
      ${Dd({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=ao(e,t);return Dd({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,place:Zt(e,n),pieces:e.batch.pieces,key:To(n)})})}
    </div>
    ${ib(e)} ${Ks()} ${Gs(e)}
  </section>`}function Dd({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,c=Ht(e,i).length>0,p=`danger-${r.replaceAll(".","-")}`,m=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${yn(n).map(({one:h,i:$})=>pa(h,$,o,r))}
    ${x({key:`${r}.strength`,label:"Lye strength",note:`water ${v(n.water_to_pure_alkali,2)} : 1 to alkali; water ${v(n.water_percent_of_fats,1)} % of the fats`,shown:[`${v(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${x({key:`${r}.superfat`,label:"Superfat as weighed",shown:[`${et(l)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${io(e,p,i)} ${Md(n.superfat_percent)} ${ob(n,o,r)}
    ${!m||g(e,"/superfat")===void 0?u:d({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:c?p:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Md(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${et(t)} and ${et(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${et(o)} and ${et(i)}.`,p=r[0],m=p?s` Most of the doubt is ${p.cause}: ${p.remedy}.`:u;return Zr(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${c}
    ${p?m:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${c} Some fat is left over even at the lowest.${m}</p>`}function ob(e,t,n){return e.heat?s`${Od(e.heat)} ${Kt(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function Od(e){let t=o=>P(Ku(a.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?_t(o.shortest_min*60):"at once"} to ${_t(o.longest_min*60)} in ${o.in}`);return s`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function ib(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,c,p="")=>x({key:`pot.${i}`,label:r,note:p,shown:l,size:"weigh",of:`${e.place}.lye_pot.${c}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${v(t.strength_percent,1)} %${_e(e)&&`; ${_e(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",z(n,pe(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,z(n,pe(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",z(n,pe(t,"lye_")),"lye_g",rb(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,z(n,pe(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${et(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,z(n,pe(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${io(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Md(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${P(z(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Od(t.heat):u}
  </div>`}function rb(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=pe(e,"lye_"),i=z(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${P(i)} with the pot: make up with water to that after cooling`}function Fd(e){let t=_e(e);return s`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${t?`Of ${t}: in`:"In"} the pieces ${P(O(a.units,e.pour.in_pieces_g))} of base, lost
      ${P(O(a.units,e.pour.lost_g))}${e.pipe?`; of topping ${P(O(a.units,e.pipe.in_pieces_g))}, lost ${P(O(a.units,e.pipe.lost_g))}`:""}.
    </p>
    <div class="row">
      ${co("pour",e.pipe&&"Base")} ${e.pipe?co("pipe","Topping"):u}
    </div>
    <div class="row">
      ${d({label:"Large scale, smallest step",at:"/scales/large/step",unit:"g",short:!0})}
      ${d({label:"Large scale, most it weighs",at:"/scales/large/most",unit:"g",short:!0})}
      ${d({label:"Fine scale, smallest step",at:"/scales/fine/step",unit:"g",short:!0})}
      ${d({label:"Fine scale, most it weighs",at:"/scales/fine/most",unit:"g",short:!0})}
    </div>
  </section>`}function Ld(e){let t=hn(e);return s`${fa(e)} ${ha(t)} ${Gi(t)} ${Ad(t)} ${Fd(t)}`}function Ed(){let e=Ie();return s`${Cd()} ${ea()}
    <div class="lanes">
      ${Pt("pour","Pour",vd())} ${e?Pt("pipe","Pipe",ma()):u}
      ${ko()?Pt("decorate","Decorate",ra()):u}
      ${me()?Pt("cut","Cut",zi()):u}
    </div>
    ${Up()}`}function Cd(e=u){return s`<div class="row">
    ${d({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${d({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    ${Tn("Mould","/pour/mould",a.files?.moulds)}
    ${Tn("Base","/pour/formula",a.files?.formulas)}
    ${Ie()?Tn("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function fa(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,c=ee(e)?`${l} batches, ${q(o,"filling")}`:oi(o,i),p=x({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${c}`:c,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"});return s`<section class="order-of" aria-labelledby="run-title">
    <div>
      ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
      ${e.from_studio?s`<p class="aside">From the studio: ${e.from_studio.text}.</p>`:u}
    </div>
    ${Cd(p)}
    <div class="batches">${ed(e)} ${ea()}</div>
    <p class="aside">Tap a figure marked = to see how it is calculated.</p>
  </section>`}function ha(e){let t=Ie();return s`<div class="lanes">
    ${Pt("pour","Pour",yd(e))} ${t?Pt("pipe","Pipe",kd(e)):u}
    ${ko()?Pt("decorate","Decorate",_d(e)):u}
    ${me()?Pt("cut","Cut",$d(e)):u}
    ${t?u:sb("Pipe","This run has no topping.","Add a topping",Lc,Ec())}
    ${ko()||me()?u:hd()}
  </div>`}function Pt(e,t,n){let o=a.folded.has(e);return s`<section class="lane ${e}" aria-labelledby="lane-${e}">
    <div class="lane-head">
      <h2 id="lane-${e}" tabindex="-1">${t}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${t}"
        @click=${()=>ut("folded",e)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?u:s`<div class="lane-body">${n}</div>`}
  </section>`}function sb(e,t,n,o,i=u){return s`<section class="lane unused" aria-label=${e}>
    <h2>${e}</h2>
    <p>${t}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}var ab={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Id(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${ab[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function Bd(e){let t=hn(e);return s`${fa(e)} ${ha(t)} ${Gi(t)}`}var lb={weigh:Bd,"set-up":Ld,watch:Id,money:Hp,mould:Vp,print:Zp};function Wd(e){let{plan:t}=a;return s`${Qo().map(n=>vn(n))} ${Yo().map(xn)} ${Ii()}
    <h1 id="run-title" tabindex="-1">${t?.run??String(a.run.now.name??"")}</h1>
    ${t?lb[e](t):ub(e)}`}function ub(e){return a.complaint?s`<p class="hint">Correct this to see the figures.</p>
    ${e==="set-up"?Ed():""}`:s`<p class="hint">Reading the run ...</p>`}var cb=()=>{f({new_run:{name:"",mould:"",formula:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Nd(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${cb}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=t.trim()&&n&&o,r=()=>{de(async()=>{await np({name:t.trim(),mould:n,formula:o}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name">Name</label>
        <input
          id="new-run-name"
          .value=${J(t)}
          @input=${l=>b(e,{name:l.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${jd(e,"mould","Mould",pb())} ${jd(e,"formula","Base",db())}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!i} @click=${r}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${i?u:s`<p class="hint">A run needs a name, a mould and a base.</p>`}
  </section>`}var pb=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],db=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function jd(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i}>${n}</label>
    <select id=${i} @change=${l=>b(e,{[t]:l.target.value})}>
      <option value="" .selected=${J(e[t]==="")}>choose ...</option>
      ${o.map(([l,c])=>s`<option value=${l} .selected=${J(l===e[t])}>${c}</option>`)}
    </select>
  </div>`}var mb=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function Hd(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(mb),n=e.filter(o=>o.shipped);return s`${On("Runs")} ${Nd()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?s`<ul class="cards">
              ${t.map(Ud)}
            </ul>`:s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      <ul class="cards">
        ${n.map(Ud)}
      </ul>
    </section>`}function Ud(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":q(t,"piece"),n??"",o?`due ${wn(o)}`:"",i?`made ${wn(i)}`:r?`changed ${wn(r)}`:""].filter(Boolean);return Fn({kind:It,one:e,facts:l,picture:fb(n),open:()=>ht(e.file)})}var fb=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;var zd=document.getElementById("page");function Jd(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${jp()} ${Pu()}
    <main id="main" tabindex="-1" data-view=${e} class=${a.is_old&&!Se(e)?"old-now":""}>
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${gb()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var hb={runs:Hd,formulas:Op,moulds:Lp};function gb(){let{view:e,fault:t}=a;return Je(e)?Wd(e):Se(e)?hb[e]():e==="formula"?bp():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Wa(()=>{lp(),We(Jd(),zd),qd()});addEventListener("resize",qd);We(Jd(),zd);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||Se(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=Wi();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return yu();j(a.run)&&Oe()});function _b(){if(!a.run.file)return ga();f({fault:void 0}),j(a.run)&&Oe(),Z()}function ga(){f({fault:void 0}),gp().catch(e=>{f({fault:$b(e)}),e instanceof w&&e.may_pass&&window.setTimeout(ga,2e3)})}function $b(e){return e instanceof w&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}function qd(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}au();hp();za(e=>{Dn(),e&&_b()});ga();
