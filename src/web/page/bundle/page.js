var So=globalThis,Po=So.ShadowRoot&&(So.ShadyCSS===void 0||So.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,ba=Symbol(),$a=new WeakMap,Ro=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==ba)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Po&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=$a.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&$a.set(n,t))}return t}toString(){return this.cssText}},wa=e=>new Ro(typeof e=="string"?e:e+"",void 0,ba);var ya=(e,t)=>{if(Po)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=So.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Yi=Po?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return wa(n)})(e):e;var{is:Ud,defineProperty:Hd,getOwnPropertyDescriptor:zd,getOwnPropertyNames:Jd,getOwnPropertySymbols:qd,getPrototypeOf:Vd}=Object,Ao=globalThis,va=Ao.trustedTypes,Kd=va?va.emptyScript:"",Gd=Ao.reactiveElementPolyfillSupport,Bn=(e,t)=>e,Qi={toAttribute(e,t){switch(t){case Boolean:e=e?Kd:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},ka=(e,t)=>!Ud(e,t),xa={attribute:!0,type:String,converter:Qi,reflect:!1,useDefault:!1,hasChanged:ka};Symbol.metadata??=Symbol("metadata"),Ao.litPropertyMetadata??=new WeakMap;var Ye=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=xa){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Hd(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=zd(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let c=i?.call(this);r?.call(this,l),this.requestUpdate(t,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??xa}static _$Ei(){if(this.hasOwnProperty(Bn("elementProperties")))return;let t=Vd(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Bn("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Bn("properties"))){let n=this.properties,o=[...Jd(n),...qd(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Yi(i))}else t!==void 0&&n.push(Yi(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return ya(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Qi).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Qi;this._$Em=i;let c=l.fromAttribute(n,r.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??ka)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,c=this[i];l!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,r,c)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};Ye.elementStyles=[],Ye.shadowRootOptions={mode:"open"},Ye[Bn("elementProperties")]=new Map,Ye[Bn("finalized")]=new Map,Gd?.({ReactiveElement:Ye}),(Ao.reactiveElementVersions??=[]).push("2.1.2");var Xi=globalThis,Ta=e=>e,Do=Xi.trustedTypes,Sa=Do?Do.createPolicy("lit-html",{createHTML:e=>e}):void 0,er="$lit$",Qe=`lit$${Math.random().toFixed(9).slice(2)}$`,tr="?"+Qe,Yd=`<${tr}>`,At=document,jn=()=>At.createComment(""),Nn=e=>e===null||typeof e!="object"&&typeof e!="function",nr=Array.isArray,Oa=e=>nr(e)||typeof e?.[Symbol.iterator]=="function",Zi=`[ 	
\f\r]`,Wn=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Ra=/-->/g,Pa=/>/g,Rt=RegExp(`>|${Zi}(?:([^\\s"'>=/]+)(${Zi}*=${Zi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Aa=/'/g,Da=/"/g,Fa=/^(?:script|style|textarea|title)$/i,or=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=or(1),F=or(2),bb=or(3),ke=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Ma=new WeakMap,Pt=At.createTreeWalker(At,129);function La(e,t){if(!nr(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Sa!==void 0?Sa.createHTML(t):t}var Ea=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=Wn;for(let c=0;c<n;c++){let p=e[c],m,h,$=-1,k=0;for(;k<p.length&&(l.lastIndex=k,h=l.exec(p),h!==null);)k=l.lastIndex,l===Wn?h[1]==="!--"?l=Ra:h[1]!==void 0?l=Pa:h[2]!==void 0?(Fa.test(h[2])&&(i=RegExp("</"+h[2],"g")),l=Rt):h[3]!==void 0&&(l=Rt):l===Rt?h[0]===">"?(l=i??Wn,$=-1):h[1]===void 0?$=-2:($=l.lastIndex-h[2].length,m=h[1],l=h[3]===void 0?Rt:h[3]==='"'?Da:Aa):l===Da||l===Aa?l=Rt:l===Ra||l===Pa?l=Wn:(l=Rt,i=void 0);let D=l===Rt&&e[c+1].startsWith("/>")?" ":"";r+=l===Wn?p+Yd:$>=0?(o.push(m),p.slice(0,$)+er+p.slice($)+Qe+D):p+Qe+($===-2?c:D)}return[La(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Un=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,c=t.length-1,p=this.parts,[m,h]=Ea(t,n);if(this.el=e.createElement(m,o),Pt.currentNode=this.el.content,n===2||n===3){let $=this.el.content.firstChild;$.replaceWith(...$.childNodes)}for(;(i=Pt.nextNode())!==null&&p.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let $ of i.getAttributeNames())if($.endsWith(er)){let k=h[l++],D=i.getAttribute($).split(Qe),O=/([.?@])?(.*)/.exec(k);p.push({type:1,index:r,name:O[2],strings:D,ctor:O[1]==="."?Oo:O[1]==="?"?Fo:O[1]==="@"?Lo:Mt}),i.removeAttribute($)}else $.startsWith(Qe)&&(p.push({type:6,index:r}),i.removeAttribute($));if(Fa.test(i.tagName)){let $=i.textContent.split(Qe),k=$.length-1;if(k>0){i.textContent=Do?Do.emptyScript:"";for(let D=0;D<k;D++)i.append($[D],jn()),Pt.nextNode(),p.push({type:2,index:++r});i.append($[k],jn())}}}else if(i.nodeType===8)if(i.data===tr)p.push({type:2,index:r});else{let $=-1;for(;($=i.data.indexOf(Qe,$+1))!==-1;)p.push({type:7,index:r}),$+=Qe.length-1}r++}}static createElement(t,n){let o=At.createElement("template");return o.innerHTML=t,o}};function Dt(e,t,n=e,o){if(t===ke)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Nn(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=Dt(e,i._$AS(e,t.values),i,o)),t}var Mo=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??At).importNode(n,!0);Pt.currentNode=i;let r=Pt.nextNode(),l=0,c=0,p=o[0];for(;p!==void 0;){if(l===p.index){let m;p.type===2?m=new Zt(r,r.nextSibling,this,t):p.type===1?m=new p.ctor(r,p.name,p.strings,this,t):p.type===6&&(m=new Eo(r,this,t)),this._$AV.push(m),p=o[++c]}l!==p?.index&&(r=Pt.nextNode(),l++)}return Pt.currentNode=At,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Zt=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Dt(this,t,n),Nn(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==ke&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Oa(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&Nn(this._$AH)?this._$AA.nextSibling.data=t:this.T(At.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Un.createElement(La(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new Mo(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Ma.get(t.strings);return n===void 0&&Ma.set(t.strings,n=new Un(t)),n}k(t){nr(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(jn()),this.O(jn()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=Ta(t).nextSibling;Ta(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Mt=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=Dt(this,t,n,0),l=!Nn(t)||t!==this._$AH&&t!==ke,l&&(this._$AH=t);else{let c=t,p,m;for(t=r[0],p=0;p<r.length-1;p++)m=Dt(this,c[o+p],n,p),m===ke&&(m=this._$AH[p]),l||=!Nn(m)||m!==this._$AH[p],m===u?t=u:t!==u&&(t+=(m??"")+r[p+1]),this._$AH[p]=m}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Oo=class extends Mt{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},Fo=class extends Mt{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},Lo=class extends Mt{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=Dt(this,t,n,0)??u)===ke)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Eo=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){Dt(this,t)}},Ca={M:er,P:Qe,A:tr,C:1,L:Ea,R:Mo,D:Oa,V:Dt,I:Zt,H:Mt,N:Fo,U:Lo,B:Oo,F:Eo},Qd=Xi.litHtmlPolyfillSupport;Qd?.(Un,Zt),(Xi.litHtmlVersions??=[]).push("3.3.3");var Be=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Zt(t.insertBefore(jn(),r),r,void 0,n??{})}return i._$AI(e),i};var ir=globalThis,Xt=class extends Ye{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=Be(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return ke}};Xt._$litElement$=!0,Xt.finalized=!0,ir.litElementHydrateSupport?.({LitElement:Xt});var Zd=ir.litElementPolyfillSupport;Zd?.({LitElement:Xt});(ir.litElementVersions??=[]).push("4.2.2");var Ia=()=>{},rr=!1;function Ba(e){Ia=e}function Ae(){rr||(rr=!0,queueMicrotask(()=>{rr=!1,Ia()}))}function Wa(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}function _(e,t){let n=e;for(let o of Wa(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function W(e,t,n){return sr(e,Wa(t),n)}function sr(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let c=[...e],p=sr(c[Number(o)],i,n);return p===void 0?c.splice(Number(o),1):c[Number(o)]=p,c}let r={...e??{}},l=sr(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var ja={};function We(e,t){(ja[e]??=[]).push(t)}function ce(e,t){for(let n of ja[e]??[])n(t)}var ar=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],Co="";function Na(e){Co=e,sessionStorage.setItem("key",e)}Na(ar()??sessionStorage.getItem("key")??"");var Ua=()=>ar()!==void 0;function Ha(e){addEventListener("hashchange",()=>{let t=ar();if(!t)return;let n=t!==Co;Na(t),e(n)})}var za={status:0,body:new Blob};async function Xd(e,t,n,o){try{let i=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":Co},signal:o});return{status:i.status,body:await i.blob()}}catch{return za}}function em(e,t,n,o){return new Promise(i=>{let r=new XMLHttpRequest;r.open(e,t),r.setRequestHeader("X-Bench-Key",Co),r.responseType="blob",r.upload.onprogress=l=>o(l.total?l.loaded/l.total:0),r.onerror=()=>i(za),r.onload=()=>i({status:r.status,body:r.response}),r.send(n)})}var Ja={send:(e,t,n,o,i)=>n!==void 0&&o?em(e,t,n,o):Xd(e,t,n,i)};var tm=Ja,fe=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),w=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},nm={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},qa="what you typed is kept here";function om(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${qa}`]:["internal error in brimwright (your files are not at fault)",`${qa}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function Va(e,t){if(e===0)return new w(0,nm);let n=om(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new w(e,o,t)}async function im(e,t){try{return Va(e,JSON.parse(await t.text()))}catch{return Va(e,{})}}async function Ka(...e){let{status:t,body:n}=await tm.send(...e);if(t>=200&&t<300)return n;throw await im(t,n)}var Ot=async(...e)=>JSON.parse(await(await Ka(...e)).text()),je=(e,t)=>Ot("POST",e,JSON.stringify(t)),it=()=>Ot("GET","/api/files"),ue=e=>Ot("GET",`/api/file?file=${encodeURIComponent(e)}`),Io=e=>Ot("PUT","/api/file",JSON.stringify(e)),Ga=(e,t)=>je("/api/file/rename",{file:e,to:t}),lr=(e,t=!1)=>je("/api/file/remove",{file:e,even_so:t}),Ya=e=>je("/api/file/restore",{removed:e}),rm=12e3,sm=([e,t])=>`&${encodeURIComponent(`file:${e}`)}=${t??""}`;async function en(e){let t={changed:{},unreadable:[]};for(let n of Qa(e)){let{changed:o,unreadable:i}=await Ot("GET",`/api/changed?wait=0${n}`);Object.assign(t.changed,o),t.unreadable.push(...i)}return t}function Qa(e){let t=[""];for(let n of[...e].map(sm))t.at(-1).length+n.length>rm?t.push(n):t[t.length-1]+=n;return t}var am=crypto.randomUUID(),ur=2e4;async function Za(e,t){let[n,...o]=Qa(e);if(o.length)return en(e);let i=`/api/changed?wait=${ur/1e3}&tab=${am}${n}`;return Ot("GET",i,void 0,void 0,t)}var Xa=e=>je("/api/plan",e),el=e=>je("/api/plan",{...e,explain:!0}),tl=e=>je("/api/gauge",{...e,inspect:!0}),Ne=e=>je("/api/gauge",e),cr=e=>je("/api/list",{what:e}),nl=async()=>(await cr("fats")).fats,ol=async()=>(await cr("moulds")).moulds,il=async()=>(await cr("tips")).tips,rt=e=>Ka("POST","/api/document",JSON.stringify(e)),rl=async e=>(await je("/api/document",{...e,open:!0})).address,sl=(e,t)=>Ot("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),al=async(e,t)=>(await je("/api/keep",{upload:e,as:t})).file;var ee=["pour","pipe","apart"];var G=e=>`${JSON.stringify(e,null,2)}
`;function Y(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var Ft=e=>e.slice(0,e.lastIndexOf("/")+1),Lt=e=>e.slice(e.lastIndexOf("/")+1),ll=(e,t)=>{let n=Ft(e);return n?lm(n+t):t};function lm(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function st(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function tn(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var um=["mould","formula","file","own_fats","own_tips"];function pr(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?pr(o,i):um.includes(n)?[i]:[]})}function dr(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...pr(e)])[n,o]=[W(n,i,void 0),W(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function ul(e,t){let n=["/id",...pr(e)].filter(o=>_(e,o)!==_(t,o));return o=>n.reduce((i,r)=>_(i,r)===_(e,r)?W(i,r,_(t,r)):i,o)}var C=(e,t)=>({name:e,label:t,unit:"mm"}),at=C("height","Floor to brim"),Bo={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},mr={block:{words:"Box, loaf or slab",measures:[C("length","Longer side at the brim"),C("width","Shorter side"),at,Bo,{...C("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),at]},fluted_cup:{words:"Fluted cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),at,{name:"flutes",label:"Flutes",unit:"",count:!0},C("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},C("across_flats","Across the flats"),at,Bo]},dome:{words:"Bowl",measures:[C("diameter","Across the brim"),at]},half_ball:{words:"Half ball",measures:[C("diameter","Across the brim")]},ball:{words:"Ball",measures:[C("diameter","Across")]},half_ring:{words:"Half ring",measures:[C("centre_diameter","Ring, middle to middle of the tube"),C("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[C("outer_floor_diameter","Cup, across the floor"),C("outer_brim_diameter","Cup, across the brim"),C("post_floor_diameter","Post, at its foot"),C("post_brim_diameter","Post, at its top"),at]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[C("height","Height"),C("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[at,Bo],points:{columns:[C("x","From the left"),C("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[C("side","Straight edge, tip to round"),at,Bo]}},cl=Object.fromEntries(Object.entries(mr).map(([e,{words:t}])=>[e,t])),nn=e=>mr[e]?.measures??[],lt=e=>mr[e]?.points;var fr=(e,t)=>String(_(e,t)??"").trim(),Hn=e=>fr(e,"/shape/kind"),De=(e,t)=>_(e,`/${t}`)!==void 0,hr=e=>["body","skin"].includes(fr(e,"/mesh/role"));function he(e,t){let n=_(e,t);return Array.isArray(n)?n:[]}function pl(e,t){return(lt(Hn(e))?.columns??[]).map(({name:o})=>String(_(t,`/${o}`)??"").trim())}function zn(e){return he(e,"/shape/points").flatMap((t,n)=>pl(e,t).every(Boolean)?[n]:[])}function Wo(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return he(e,"/shape/points").flatMap((n,o)=>t(pl(e,n))?[o]:[])}var gr=e=>he(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function dl(e){let t=e,n=(o,i)=>{if(!Array.isArray(_(t,o)))return;let r=i.map(l=>_(e,`${o}/${l}`));t=W(t,o,r)};return lt(Hn(e))&&n("/shape/points",zn(e)),n("/water/weighings",gr(e)),t}function jo(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?zn(e):gr(e);return`${n}/${r[Number(o)]??o}${i}`}function Jn(e){let t=[],n=i=>fr(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(De(e,"shape")){let i=Hn(e);o(i!=="","the shape");for(let{name:l,label:c,optional:p}of nn(i))o(p||n(`/shape/${l}`),c.toLowerCase());let r=lt(i);r&&o(zn(e).length>=r.least,`${r.least} points at least`)}if(De(e,"water")){o(n("/water/temperature"),"the water's temperature"),o(_(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(_(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(gr(e).length>0,"a weighing of water")}return!hr(e)&&!De(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Et={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?Lt(t):st(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},on={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?Lt(t):st(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},Te={name:"mould",list:"moulds",new_name:({now:e})=>st(String(e.name),".json"),written:e=>({...dl(e),name:String(e.name??"").trim()}),is_begun:e=>De(e,"shape")||De(e,"mesh")};var ml={kind:Et,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},Ue={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:ml,formulas:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},open:new Set,folded:new Set,units:cm(),announcement:""},a=Ue;function cm(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}function f(e){Object.assign(Ue,e),Ae()}var oe=e=>f({announcement:e});function b(e,t){Object.assign(e,t),Ae()}function Ze(e,t){let{[e]:n,...o}=Ue.formulas;f({formulas:t?{...o,[e]:t}:o})}function rn(e,t){let n=new Set(Ue[e]);n.delete(t)||n.add(t),f({[e]:n})}function No(e=ml){f({run:e,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0})}function _r(e){Ue.open.has(e)||f({open:new Set(Ue.open).add(e)})}function Uo(e,t,{name:n,note:o}={}){if(!Ue.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},r=Ue.files[e].filter(c=>c.file!==t),l=Ue.files[e].findIndex(c=>c.file===t);r.splice(l<0?r.length:l,0,i),f({files:{...Ue.files,[e]:r}})}async function ut({kind:e,name:t,text:n,from:o,about_to:i,is_own:r}){for(;;){let{runs:l=[],formulas:c=[],moulds:p=[]}=a.files??{},m=tn(t,[...l,...c,...p]);i?.(m);let h=await pm(m,n,o);if(Uo(e.list,m,Y(h.there.text)??{name:m}),h.is_new||r?.(h.there))return h.there}}async function pm(e,t,n){try{return{is_new:!0,there:await Io({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof w)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var Ho=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Ct({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let c={id:t,file:n,version:o,shipped:i,text:G(r),copy:l};localStorage.setItem(Ho(e)+t,JSON.stringify(c))}catch{}}function $r(e,t){try{return JSON.parse(localStorage.getItem(Ho(e)+t)??"null")??void 0}catch{return}}var It=(e,t)=>localStorage.removeItem(Ho(e)+t);function zo(e){let t=Ho(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>$r(e,o)??[])}var dm=300,U=e=>e.now!==e.saved;function qn(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function He(e,t,n=t){let o=await ue(t),i=mm(e,JSON.parse(o.text),o.shipped),r=$r(e,n),l=r?.copy&&o.shipped?await fm(e,r,i):void 0;if(l)return It(e,n),He(e,l);let{version:c,shipped:p=!1}=o,m={kind:e,id:n,file:t,version:c,shipped:p,now:i,saved:i,unanswered:[]};return r&&hm(m,r,o),m}var mm=(e,t,n=!1)=>e.name==="run"&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function fm(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=Y(t.text),i=Y((await ue(t.copy)).text);if(!(!o||!i||G(o)===G(n)))return dr(e.written(o),i)?t.copy:void 0}function hm(e,t,n){let o=Y(t.text);if(!o||G(o)===G(e.now))return It(e.kind,e.id);b(e,{now:o}),!(t.version===n.version||n.shipped)&&(b(e,{version:t.version}),vl(e,n))}function ge(e,t){let n=e.now;b(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Ct(e),ce("edited",{file:e,before:n})}var fl=new WeakMap,br=async e=>fl.get(e),Bt=e=>gl(e,()=>gm(e)),hl=e=>gl(e,()=>e.shipped?_l(e,$l):Promise.resolve());function gl(e,t){let n=br(e).then(t);return fl.set(e,n.catch(()=>{})),n}async function gm(e){!U(e)||e.theirs||await _l(e,e.shipped||!e.file?$l:bl)}async function _l(e,t){b(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof w&&b(e,{failed:fe(n.complaint)}),n}}async function $l(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await ut({kind:t,name:t.new_name(e),text:G(r),from:i,about_to:h=>Ct(e,h),is_own:({text:h})=>i!==void 0&&dr(r,Y(h)??{})}),c=JSON.parse(l.text),p=ul(r,c),m=e.now===o?c:p(e.now);It(t,n),b(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:m,saved:c}),U(e)&&Ct(e),i!==void 0&&ce("copied",{file:e,from:i,renamed:p})}async function bl(e){let{version:t,now:n}=e,o=G(e.kind.written(n));b(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Jo(e,n,(await Io({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;wl(e,i.answer),U(e)&&!e.theirs&&await bl(e)}}function Jo(e,t,n){b(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),U(e)?Ct(e):It(e.kind,e.id),Uo(e.kind.list,e.file,t)}function wl(e,{version:t,text:n}){if(n===G(e.kind.written(e.now)))return Jo(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(b(e,{unanswered:[]}),o)return b(e,{version:t,saved:void 0,theirs:void 0});let i=U(e)||e.theirs?void 0:Y(n);i?_m(e,i,t):vl(e,{version:t,text:n})}function _m(e,t,n){ce("giving_way",{file:e}),b(e,{set_aside:e.now,is_taken:!0,now:t}),Jo(e,t,n),oe(`${e.file} was changed outside this page, and stands here as it is now.`),ce("gave_way",{file:e})}var yl=e=>b(e,{set_aside:void 0,is_taken:void 0});function vl(e,{version:t,text:n}){b(e,{theirs:{version:t,text:n}}),Ct(e),oe(`${e.file} was changed outside this page. Which version do you want to keep?`),ce("conflict",{file:e})}function xl(e){if(!e.theirs)return;let t=Y(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return b(e,{failed:n})}ce("giving_way",{file:e}),b(e,{set_aside:e.now,now:t}),Jo(e,t,e.theirs.version),ce("gave_way",{file:e})}function kl(e){e.theirs&&(b(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Ct(e),ce("unwritten",{file:e}))}function Tl(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;ge(e,t),b(e,{set_aside:o?void 0:n})}var Sl=e=>(e.theirs??e).version;function Rl(e,t){b(e,{id:t,file:t}),ce("renamed",{file:e})}var Pl=e=>e.shipped||!e.file?[]:[[e.file,Sl(e)]];async function wr(e,t,n,o){let i=e.file,r=()=>Sl(e)===t&&e.file===i;if(!r()||(await br(e),!r()))return!1;o(),await yr();let l=await $m(i,n);return await br(e),r()&&(wl(e,l),U(e)&&!e.theirs&&ce("unwritten",{file:e})),!0}async function $m(e,t){let n=await t(e);return n===null?{version:n,text:null}:ue(e)}var yr=()=>new Promise(e=>setTimeout(e,dm));var bm=300,wm=1200,qo="",Al=0;function Vn(){let e={run:{file:a.run,now:a.run.now}};for(let t of ee){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}return e}function Wt(e=""){let t=performance.now();e&&e===qo&&t-Al<=wm&&a.past.length||vr(Vn()),f({future:[]}),qo=e,Al=t}var vr=e=>f({past:[...a.past,e].slice(-bm)});function Vo(e){vr(Dl(Vn(),e,()=>e.saved??{}))}function Dl(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function xr(e,t){let n=o=>o.map(i=>Dl(i,e,t));f({past:n(a.past),future:n(a.future)})}function Ko(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,Vn()]}),Ol(e,"Undone"))}function Ml(){let e=a.future.at(-1);e&&(f({past:[...a.past,Vn()],future:a.future.slice(0,-1)}),Ol(e,"Redone"))}function Ol(e,t){qo="",f({typed:void 0});for(let n of[...ee,"run"])ym(n,e);oe(t)}function ym(e,t){let n=t[e],o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Ze(e,n.file),n.file.now!==n.now&&ge(n.file,n.now))}var Go=e=>e===a.run||ee.some(t=>a.formulas[t]===e);We("giving_way",({file:e})=>{Go(e)&&(qo="",vr(Vn()),f({typed:void 0}))});We("copied",({file:e,renamed:t})=>xr(e,t));var sn=e=>ll(a.run.file,e);function ct(e,t){let n=sn(e);return t?.some(o=>o.file===n)?n:e}async function jt(){for(let e of["pour","pipe"]){let t=_(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await vm(e,ct(t,a.files?.formulas)):Ze(e,void 0)}}async function vm(e,t){if(a.formulas[e]?.file===t)return;let n=ee.map(o=>a.formulas[o]).find(o=>o?.file===t);if(Ze(e,n),!n)try{let o=await kr(t);Ze(e,o),U(o)&&ce("unwritten",{file:o}),o.theirs&&ce("conflict",{file:o})}catch(o){if(!(o instanceof w||o instanceof SyntaxError))throw o}}async function kr(e){let t=await He(on,e);return U(t)&&Vo(t),t}var Kn=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function an(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:c,material:p}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(c),i(c)),colour:n.materials[p].pbrMetallicRoughness.baseColorFactor}))}function Ll(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:c,indices:p}=e;for(let m=0;m<p.length;m+=3){let h=[];for(let $=0;$<3;++$){let k=3*p[m+$],D=3*p[m+($+1)%3],O=c[k+i]-t,xe=c[D+i]-t;if(O>0==xe>0)continue;let ga=O/(O-xe),_a=[1e3*(c[k]+ga*(c[D]-c[k])),1e3*r*(c[k+o]+ga*(c[D+o]-c[k+o]))];O>0?h.push(_a):h.unshift(_a)}h.length===2&&l.push([h[0],h[1]])}return l}function El(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Gn(e){let t=e.positions,[n,o,i,r,l,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let m=0;m<t.length;m+=3)i=Math.min(i,t[m]),r=Math.max(r,t[m]),l=Math.min(l,t[m+1]),c=Math.max(c,t[m+1]),n=Math.min(n,t[m+2]),o=Math.max(o,t[m+2]);let p=n+(o-n)*.50137;return{loops:El(Ll(e,p)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*c,cut_y:-1e3*p}}function Cl(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>El(Ll(e,n+r*o,"level"))).reduce((r,l)=>Fl(l)>1.001*Fl(r)?l:r)}function Fl(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Tr(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],c)=>{let[p,m]=i[(c+1)%i.length];if(!(Math.min(l,m)>t||Math.max(l,m)<t))for(let h of l===m?[r,p]:[r+(t-l)/(m-l)*(p-r)])n=Math.min(n,h),o=Math.max(o,h)});return n<=o?[n,o]:[e.left,e.right]}var Il=40,xm=2e3,Sr=0;async function Bl(e){let t=await rt({kind:"glb",gauge:e}),n=an(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function ln(e){let[t,n]=await Promise.all([Ne(e),Bl(e)]),o=Gn(n);return{gauge:t,outline:o,above:Cl(n,o)}}async function km(e){let{pockets:t}=await Ne(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Il},(i,r)=>`${(n*(r+1)/Il).toFixed(4)} mm`);return Ne({...e,depth:o})}function ze(){Tm()}async function Tm(){let e=_(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++Sr,n=ct(e,a.files?.moulds);try{let[o,i]=await Promise.all([km({file:n}),Bl({file:n})]);t===Sr&&f({measured:{mould:n,gauge:o,outline:Gn(i)},measuring_failed:void 0})}catch(o){if(t!==Sr)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(ze,xm)}}var Sm=30,Rm=1200,Wl=0,Rr=!1,Pr=!1;function Dr(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Or()}var pt=()=>f({mould:void 0,mesh:void 0}),un=(e,t,n)=>Dr(qn(Te,e),t,n);async function Nl(e,t){let n=await He(Te,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&b(n,{now:{...n.now,name:""}}),Dr(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Ul({id:e,file:t,text:n}){let o=t?await He(Te,t,e):qn(Te,JSON.parse(n),e);Dr(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var A=()=>a.mould,S=()=>A().open.now;function q(e,t){Pm(e),ge(A().open,W(S(),e,t))}var Ar="",jl=0;function Pm(e){let t=performance.now(),{past:n}=A();(e!==Ar||t-jl>Rm||!n.length)&&b(A(),{past:[...n,S()]}),b(A(),{future:[]}),[Ar,jl]=[e,t]}function Hl(){let{past:e,future:t,open:n}=A(),o=e.at(-1);o&&(b(A(),{past:e.slice(0,-1),future:[...t,n.now]}),Jl(o,"Undone"))}function zl(){let{past:e,future:t,open:n}=A(),o=t.at(-1);o&&(b(A(),{past:[...e,n.now],future:t.slice(0,-1)}),Jl(o,"Redone"))}function Jl(e,t){Ar="",f({typed:void 0}),ge(A().open,e),oe(t)}var Am=["name","note","owned","unmould_after"];function Mr(e){let t=S(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!Am.includes(l)))&&b(A(),{is_old:!0});let i=n.some(l=>A().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(A().is_old||i||r)&&Or()}function Or(){clearTimeout(Wl),Wl=window.setTimeout(()=>{Dm()},Sm)}async function Dm(){if(Rr)return void(Pr=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!De(t,"shape")&&!De(t,"mesh"))){if(Jn(t).length)return b(e,{complaint:void 0});Rr=!0;try{let n=Te.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await ln(o);e.open.now===t&&b(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;e.open.now===t&&Fr(n)}finally{Rr=!1,Pr&&Or(),Pr=!1}}}function Fr(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;b(A(),{complaint:{field:jo(S(),t),line:l,keep:i&&{...i,at:jo(S(),i.at)},about:r===void 0?void 0:jo(S(),`${t}/${r}`)}})}var Lr=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],ql=e=>e.filter(t=>t.theirs),Xe=e=>ql(Lr(e==="apart"?["apart"]:["pour","pipe"]))[0],Yo=()=>[a.run,...Lr(ee)].filter(e=>e.is_taken&&!e.theirs),Qo=()=>ql([a.run,...Lr(ee)]);var Yn=()=>a.formulas.apart?"apart":"run",Vl=e=>f({dangers:{...a.dangers,[Yn()]:e}});function Kl(e){let t=e.cautions.filter(n=>n.severity==="danger");Vl(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function Gl(e){e.lye_heavy&&Vl([{text:fe(e),is_of_heat:!1}])}var Mm=400,Om=2e3,Zo=0;function Qn(){clearTimeout(Zo),Zo=window.setTimeout(()=>{Me()},Mm)}async function Me(){clearTimeout(Zo);let{run:e}=a;try{await Bt(e),U(e)&&!e.theirs&&e===a.run&&Qn()}catch(t){if(!(t instanceof w))throw t;t.may_pass&&(Zo=window.setTimeout(()=>{Me()},Om))}}var Yl=Promise.resolve();function cn(){let e=Yl.then(Fm);return Yl=e.catch(()=>{}),e}async function Fm(){for(let e of ee){let t=a.formulas[e];!t||!U(t)||t.theirs||(t.shipped&&e!=="apart"&&await hl(a.run),await Bt(t))}}function Ql(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=ct(String(n?.mould??""),a.files?.moulds);return{file:tn("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...Lm(t)}}}function Lm(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var Oe=new Map,Zn=new Set,Em={changed:{},unreadable:[]},pn=()=>new Set(ee.flatMap(e=>a.formulas[e]??[]));async function Zl(){let e=Cm(),t=new Set([...pn()].map(({file:o})=>o));for(let o of Oe.keys())!e.has(o)&&!t.has(o)&&Oe.delete(o);for(let o of Zn)e.has(o)||Zn.delete(o);let n=[...e].filter(o=>!Oe.has(o));for(let[o,i]of await Xl(n))Oe.has(o)||Oe.set(o,i)}async function Xl(e){let t=e.filter(o=>!Zn.has(o)),n=t.length?await en(new Map(t.map(o=>[o,null]))):Em;return Ir(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Er=async e=>(await Xl([e])).get(e)??null,Cr=()=>new Map([...Oe].filter(([e])=>!Zn.has(e)));function Cm(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(sn(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(sn("studio.json")),t(_(n,"/pour/mould")),t(_(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t(_(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t(_(n,`/${o}/formula`));for(let{file:o,now:i}of pn()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Ft(o)+r).add(r)}return e}function eu(e,{changed:t}){let n=Object.keys(t).filter(o=>Oe.has(o)&&Oe.get(o)===e.get(o));for(let o of n)Oe.set(o,t[o]);return n}var Ir=e=>e.forEach(t=>Zn.add(t));function tu(){return[...pn()].flatMap(({file:e,version:t})=>{let n=Oe.get(e)??t;return Oe.delete(e),n===t?[]:[e]})}var nu=0,Br=()=>nu;function Wr(e){++nu,f({is_old:!0,changed_beside:e})}var Im=1e3,Bm=450,Xo=!1,Nt=!1,jr=0;function Q(){f({is_old:!0}),Xo?Nt=!0:dn()}async function dn(){if(Xo){Nt=!0;return}Xo=!0,ou(!1);try{do Nt=!1,await Wm();while(Nt)}finally{Xo=!1,ou(!0),Ae()}}var ou=e=>{document.documentElement.dataset.settled=String(e)};function iu(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function Wm(){let e=iu();try{await cn(),await Zl(),e=iu();let{apart:t}=a.formulas;if(Xe(t?"apart":"run"))return f({is_old:!0});let n=Br(),o=t?Ql(t.file):{file:a.run.file,run:a.run.now},i=await Xa(o);if(window.clearTimeout(jr),!e())return void(Nt=!0);f({plan:i,planned:o,complaint:void 0}),Kl(i);let r=n===Br();f({is_old:Nt||!r}),r&&f({changed_beside:void 0})}catch(t){if(!(t instanceof w))throw t;if(!e())return void(Nt=!0);jm(t)}}function jm(e){f({is_old:!0}),window.clearTimeout(jr);let t=()=>{f({complaint:e.complaint}),Gl(e.complaint)};a.complaint||!a.plan?t():jr=window.setTimeout(t,Bm),e.may_pass&&window.setTimeout(Q,Im)}var ei=e=>Object.values(a.formulas).includes(e),ru=e=>`${String(_(e,"/pour/formula"))}
${String(_(e,"/pipe/formula"))}`;function Nm(e,t){_(e,"/pour/mould")!==_(t,"/pour/mould")&&ze(),ru(e)!==ru(t)&&jt(),Q(),Qn()}var Um=Q;function Hm(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String(_(r,o)??"").endsWith(Lt(t))?W(r,o,e.file):r;xr(a.run,i),i(a.run.now)!==a.run.now&&ge(a.run,i(a.run.now))}}function su(){We("edited",({file:e,before:t})=>{e===a.run?Nm(t,e.now):ei(e)?Um():e===a.mould?.open&&Mr(t)}),We("gave_way",({file:e})=>{if(e===a.mould?.open)return Mr();e===a.run&&(ze(),jt().then(Q)),Q()}),We("unwritten",({file:e})=>{e===a.run?Me():ei(e)&&Q()}),We("conflict",({file:e})=>{ei(e)&&f({is_old:!0})}),We("renamed",({file:e})=>{e===a.run&&localStorage.setItem("run",e.file),Q()}),We("copied",({file:e,from:t})=>{ei(e)&&Hm(e,t),e===a.run&&(localStorage.setItem("run",e.file),Q())})}var Xn=["runs","formulas","moulds"],eo=["weigh","set-up","watch","money","mould","print"],Se=e=>Xn.some(t=>t===e),Je=e=>eo.some(t=>t===e);var to=()=>f({own_fats:{}});function mn(e){let t=Nr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Nr(e){let t=a.formulas[e],n=_(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=`${t.file}
${n}`,i=a.own_fats[o];return i||(au(o,"waiting"),zm(n,t.file).then(r=>au(o,r)),"waiting")}var au=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function zm(e,t){for(let n of new Set([Ft(t)+e,e])){let o=await Jm(n);if(Array.isArray(o?.fats))return o.fats.map(qm)}return"none"}async function Jm(e){try{return Y((await ue(e)).text)}catch{return}}var qm=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:Vm(n)});function Vm(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var fn=[],no;function ti(){fn.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||fn.push(e);no===void 0&&uu()}function lu(e){let t=a.own_moulds[e];return!t&&e!==no&&!fn.includes(e)&&fn.push(e),no===void 0&&fn.length&&uu(),t}async function uu(){for(;(no=fn.shift())!==void 0;){let e=no,t=await Km(e);f({own_moulds:{...a.own_moulds,[e]:t}})}}async function Km(e){try{let{pockets:t}=await Ne({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof w))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var pu=()=>f({own_tips:{}}),Ur=!1;function du(){return!a.tips&&!Ur&&(Ur=!0,il().then(e=>f({tips:e}),fu).finally(()=>Ur=!1)),a.tips??[]}function mu(e){let t=sn(e),n=a.own_tips[t];return n||!e||a.typed?n??[]:(cu(t,[]),ue(t).then(({text:o})=>cu(t,Gm(o)),fu),[])}var cu=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function Gm(e){let t=Y(e)?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function fu(e){if(!(e instanceof w))throw e}var ni=300,Ym=5e3,bu=2e3,Qm=500,hu=!1,oo=new AbortController,wu=()=>oo.abort(),yu=()=>document.visibilityState==="hidden";function vu(){if(hu)return;hu=!0;let e=async()=>{oo=new AbortController;let t=await Zm(oo).then(()=>yu()?Ym:ni,()=>oo.signal.aborted?ni:bu);await gu(ni),await gu(t-ni,oo.signal),e()};e()}var gu=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),xu=()=>[a.run,...a.mould?[a.mould.open]:[],...pn()],ku=()=>new Map(xu().flatMap(Pl)),_u=()=>JSON.stringify([[...ku().keys()],[...Cr().keys()]]);async function Zm(e){let[t]=tu();t!==void 0&&await $u(t);let[n,o]=[ku(),Cr()],i=new Map([...o,...n]),r=[...o].every(([p,m])=>i.get(p)===m),l=r&&!yu()?await Xm(i,e):await en(i);Ir(l.unreadable),await ef(n,l);let[c]=eu(o,r?l:await en(o));c!==void 0&&await $u(c)}async function Xm(e,t){let[n,o]=[_u(),Date.now()],i=window.setInterval(()=>{(_u()!==n||Date.now()-o>ur+bu)&&t.abort()},Qm);try{return await Za(e,t.signal)}finally{window.clearInterval(i)}}async function ef(e,{changed:t}){let n=pn();for(let o of xu()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await tf(o,i):await wr(o,i,Er,()=>{}))}}async function tf(e,t){await wr(e,t,Er,()=>Wr(e.file))&&(to(),Q())}async function $u(e){Wr(e),await yr(),to(),pu(),f({measured:void 0}),ze(),ti(),await jt(),Q()}var Hr=s`<span aria-hidden="true">⚠</span> Danger`;function io(e,t="",n){let o=Ut(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${Hr}</strong> ${i}</p>`)}
  </div>`:u}function Ut(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function Tu(){let e=Se(a.view)||Yn()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var Su=()=>Tu().length>0;function Ru(){let e=Tu(),t=rf();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${Hr}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${nf()?s`<button type="button" @click=${of}>To the question</button>`:u}
          </div>`:u}
  </section>`}var nf=()=>Xe(Yn())!==void 0&&!Se(a.view);function of(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function rf(){if(!a.run.file||a.view==="reading")return"";let e=Xe(Yn());return e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var zr=e=>e==="run"?a.run:a.formulas[e],Jr=e=>zr(e)?.now,g=(e,t)=>_(Jr(e),t),j=(e,t)=>String(g(e,t)??"");function dt(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function H(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Z(e,t,n){let o=zr(e);!o||_(o.now,t)===n||(Wt(`${e} ${t}`),ge(o,W(o.now,t,n)))}function Pu(e,t){let n=zr(e);n&&(Wt(),f({typed:void 0}),ge(n,t(n.now)))}var Au="examples/spring_cups.run.json";async function Du(e){let t=await it();f({files:t});let n=t.runs.some(o=>o.file===e.run);try{await mt(n?e.run:sf(t),n||!e.run?e.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Mu(){let[e,t]=await Promise.all([nl(),ol()]);f({fats:e,catalogue:t})}function sf(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(r=>r.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Au)?Au:e.runs[0]?.file??"")}async function mt(e,t="weigh"){if(!e)return f({view:"runs"});a.run.file&&U(a.run)&&await Me();let n=await He(Et,e);No(n),f({view:t}),localStorage.setItem("run",n.file),U(n)&&(Vo(n),Qn());let o=dn();ze(),await Promise.all([o,jt()]),vu()}var af=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function qr(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.cavities,pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}}};af()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,o.spoilage=t.spoilage??"0 %",o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await ut({kind:Et,name:st(e.name,".run.json"),text:G(o)});await mt(i,"set-up")}var lf="examples/plain_bars.run.json";function ft(e){to();let t=Je(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function ro(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return ft(t);a.run.file||await mt(lf,"reading"),await uf(e)}async function uf(e){let t={past:a.past,future:a.future};f({run_steps:t,past:[],future:[]});try{Ze("apart",await kr(e))}catch(n){throw f({...t,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),ft("apart"),dn()}async function cf(){let e=a.formulas.apart!==void 0;return await Vr()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function Vr(){return a.formulas.apart?await pf()?(dn(),!0):!1:!0}async function pf(){try{await cn()}catch(t){if(!(t instanceof w))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return oe("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Ze("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Kr(e){let{file:t}=a.formulas.apart;await cf()&&Z("run",`/${e}/formula`,t)}var df=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Ou=e=>Lu(df(e));async function Fu(e,t){let{$schema:n,...o}=JSON.parse((await ue(e)).text);await Lu({...o,name:t},e)}async function Lu(e,t){let n=st(String(e.name),".formula.json"),{file:o}=await ut({kind:on,name:n,text:G(e),from:t});await ro(o)}function Gr(e){return Math.min(a.batch,e.batches.length-1)}function hn(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,l=Gr(e),c=n[l],{pour:p,pipe:m,dust:h,lye_pot:$,bottles:k}=c;return{...r,pour:p,pipe:m,dust:h,lye_pot:$,bottles:k,batch:c,place:`batches.${l}`,whippings:m?.whippings??[],whole:e}}var te=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,mf=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Fe(e,{pieces:t,casts:n}){let o=e.cut?te(t,"bar"):te(t,"piece");return n===t?o:`${o} from ${te(n,...mf(e))}`}var so=e=>e===1?"once":`${e} times`,gn=e=>e.batches.length>1,X=e=>e.pieces.batches>1;function _n(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function Eu(e,{count:t,numbers:n}){return X(e)?gn(e)?`made ${so(t)}: ${t===1?"batch":"batches"} ${_n(n.map(String))} of ${e.pieces.batches}`:`made ${so(t)}`:""}function _e(e){return X(e.whole)?`one batch, ${Fe(e.whole,e.batch)}`:""}var Cu=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Yr(e,t){return Cu(e)?`${Fe(e.whole,t)}${t.count>1?`, whipped ${so(t.count)}`:""}`:""}function ao(e,t){let n=Yr(e,t);return n&&`one whipping: ${n}`}var Iu=e=>X(e.whole)||Cu(e),oi=(e,t)=>`${te(e,"filling")} of ${te(t,"cavity","cavities")}`;var ri=28.349523125,Nu=25.4,ff=29.5735295625;function qe(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function v(e,t){return hf(qe(e,t))}var hf=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function et(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${qe(e,t)} %`:Qr(e)?"just below 0 %":"0.0 %"}var Qr=e=>e<0||Object.is(e,-0),Uu=e=>Math.abs(e-Math.round(e))<1e-6;function Bu(e){return e?[0,1,2,3].find(t=>Uu(e*10**t))??3:0}function Wu(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function gf(e){return[0,1,2].find(t=>e.every(n=>Uu(n*10**t)))??3}function si(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function pe(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-gf([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Hu=.001;function ii(e,t,n,o,i=1e-9){let r=10**n;return qe(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var ju=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function _f(e){if(!ju.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return ju.find(t=>Math.abs(t*ri-e)<.6*Hu)}function z(e,t,n="nearest"){let o=t.scale_step_g||.1,i=_f(o),r=Math.min(.6*Hu,o/2),l=i?ii(t.g,1,Wu(o),n):ii(t.g,1,Bu(o),n,r),c=i?ii(t.g,ri,Bu(i),n,r):ii(t.g,ri,Wu(o/ri),n),[p,m]=[`${t.g_text??l} g`,`${t.oz_text??c} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[m,p]:si(e,p,m)}var M=(e,t,n=1,o="nearest")=>z(e,{g:t,scale_step_g:10**-n},o);function ne(e,t,n=1){return si(e,`${qe(t,n)} ml`,`${qe(t/ff,2)} US fl oz`)}function ie(e,t){return si(e,`${v(t,1)} mm`,$f(t))}function $f(e){let t=Math.round(Math.abs(e)/Nu*16),n=e<0&&t?"-":"",o=t%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/16),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Zr=([e])=>e,P=([e,t])=>t?`${e} (${t})`:e;function zu(e,t){return si(e,`${qe(t,0)} \xB0C`,`${qe(t*1.8+32,0)} \xB0F`)}function $n(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Nu;return n*o}function bn(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var ai=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function wn(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function ht(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var Ju=e=>e.goes_into==="lye",qu=({role:e})=>e==="alkali",bf=e=>qu(e)?"down":"nearest",tt=(e,t)=>z(e,t,bf(t));function yn(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>Ju(i)),n=({one:i})=>i.role==="water",o=({one:i})=>qu(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function li(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!Ju(t))}function vn(e,t=()=>{}){if(!e.theirs)return u;let n=e.theirs.text===null,o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{kl(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?u:s`<button type="button" @click=${()=>xl(e)}>Load the saved file</button>`}
      <button type="button" @click=${i}>Overwrite it with this page</button>
    </div>
  </section>`}function xn(e){if(e.theirs||!e.set_aside||Go(e)&&!e.is_taken)return u;let t=()=>{Go(e)&&Wt(),Tl(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>yl(e)}>Close</button>`:u}
    </div>
  </section>`}var Ht={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Vu=e=>(...t)=>({_$litDirective$:e,values:t}),ui=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:lx}=Ca;var Ku=e=>e.strings===void 0;var wf={},Gu=(e,t=wf)=>e._$AH=t;var J=Vu(class extends ui{constructor(e){if(super(e),e.type!==Ht.PROPERTY&&e.type!==Ht.ATTRIBUTE&&e.type!==Ht.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Ku(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===ke||t===u)return t;let n=e.element,o=e.name;if(e.type===Ht.PROPERTY){if(t===n[o])return ke}else if(e.type===Ht.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return ke}else if(e.type===Ht.ATTRIBUTE&&n.getAttribute(o)===t+"")return ke;return Gu(e),t}});var V=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Xr(e,t){return _(Jr(e),t)}function Ve(e,t){let n=a.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return zt(e)?fe(n):void 0}function re(e,t){return a.complaint?.field===t?Ve(e,t):void 0}function zt(e){let t=a.complaint,n=e==="run"?a.run.file:a.formulas[e]?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function yf(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(Xr(e,n)??{}).length>1?t:n}function Jt(){let e=a.complaint;if(e)for(let t of["run",...ee])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ve(t,n)&&document.getElementById(V(t,n));if(o)return o}}function vf(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=xf(e,n);return o&&ai(t)?`${t.trim()} ${o}`:t}function xf(e,t){return bn(Xr(t,e.at))||e.unit||""}var $e=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,es=!1;addEventListener("pointerdown",()=>es=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>es=!1,!0);var Yu=()=>f({typed:void 0});function ts(){es?addEventListener("pointerup",()=>setTimeout(Yu),{once:!0}):Yu()}function d(e){let t=e.of??"run",n=V(t,e.at),o=Xr(t,e.at),i=a.typed?.key===n?a.typed.text:o===void 0?"":String(o),r=Ve(t,e.at),l=m=>{let h=m.target.value;f({typed:{key:n,text:h}});let $=vf(e,h);Z(t,$===void 0&&e.takes_part?yf(t,e.at):e.at,$)},p=(a.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||e.hint;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${r?"wants":""}"
  >
    <label for=${n}>${e.label}</label>
    <input
      id=${n}
      .value=${J(i)}
      @input=${l}
      @blur=${ts}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${r?"true":"false"}
      aria-describedby=${[r||p?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${$e(n,r,p)}
  </div>`}function ci(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var Re=e=>()=>document.getElementById(e),_t=(e,t)=>Re(V(e,t)),qt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),kf=()=>document.activeElement;function pi(e){requestAnimationFrame(()=>ci(e()))}function kn(e,t,n,o=kf){oe(t),Pu(e,n),pi(o)}function K(e,t,n,o,i){kn(e,t,r=>W(r,n,o),i)}var gt=(e,t,n)=>`${V(e,t)}-${n}`;function E(e,t){let n=re(e,t);return n?s`<p id=${V(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Qu=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function se(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${Qu(t,n,o)}</div>`}function y({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:c,then:p,hint:m}){let h=i?gt(e,n,t.replaceAll(/\W+/g,"-")):V(e,o),$=i?void 0:re(e,o),k=D=>{if(D===r)return;let O=l.find(([xe])=>xe===D)[1];K(e,`${t}: ${O}`,n,c(D),p&&_t(e,p(D)))};return s`<div class="field asked ${$?"wants":""}">
    <p class="question" id="${h}-label">${t}</p>
    <div
      class="choice"
      role="group"
      id=${h}
      tabindex="-1"
      aria-labelledby="${h}-label"
      aria-describedby=${$||m?`${h}-said`:u}
    >
      ${Qu(r,l,k)}
    </div>
    ${$e(h,$,m)}
  </div>`}function ns(e,t,n,o){let i=V("run",e),r=re("run",e),l=()=>K("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
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
    ${$e(i,r)}`}function Le({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:c}){let p=V(t,n),m=Ve(t,n),h=l??j(t,n),$=!h||o.some(([O])=>O===h),k=[["",i],...$?[]:[[h,h]],...o];return s`<div class="field choose ${m?"wants":""}">
    <label for=${p}>${e}</label>
    <select
      id=${p}
      @change=${O=>{let xe=O.target.value;c?c(xe):Z(t,n,xe||!r?xe:void 0)}}
      aria-invalid=${m?"true":"false"}
      aria-describedby=${m?`${p}-said`:u}
    >
      ${k.filter(([O])=>O||r||!h).map(([O,xe])=>s`<option value=${O} .selected=${J(O===h)}>${xe}</option>`)}</select
    >${$e(p,m)}
  </div>`}function Tn(e,t,n=[]){let o=ct(j("run",t),n);return Le({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function be({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let c=gt(e,t,"part"),p=gt(e,t,"add");return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${p} @click=${()=>K(e,`${o} added`,t,r,qt(c))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>K(e,`${o} removed`,t,void 0,Re(p))}
      >
        Remove
      </button>
    </div>
    ${E(e,t)} ${l()}
  </div>`}var Zu=(e,t)=>`folded ${e} ${t}`,Xu=(e,t)=>_r(Zu(e,t));function R({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=Zu(e,t);(i||n.some(m=>Ve(e,m)))&&_r(l);let c=a.open.has(l);return s`<details .open=${c}>
    <summary @click=${m=>{m.preventDefault(),rn("open",l)}}>${o}</summary>
    ${c?s`<div class="folded">${r()}</div>`:u}
  </details>`}var T=({of:e="run",at:t})=>dt(e,t),L=({of:e="run",at:t},n)=>gt(e,`${t}/${n}`,"item"),di=({of:e="run",at:t},n,o)=>gt(e,`${t}/${n}`,o),Tf=({of:e="run",at:t})=>V(e,t);function lo(e,t,n,o){let{of:i="run",at:r,stays:l,and:c=p=>p}=e;kn(i,t,p=>c(W(p,r,n.length||l?n:void 0),n.length),o)}function I(e,t,n){let o=T(e);lo(e,`${n} added`,[...o,t],qt(L(e,o.length)))}function Sf(e,t,n){let o=T(e).filter((l,c)=>c!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);lo(e,`${n} removed`,o,r?Re(di(e,i,"drop")):_t(e.of??"run",e.at))}function Rf(e,t,n,o){let i=[...T(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",p=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;lo(e,`${o} moved ${l}`,i,Re(di(e,t+n,p)))}function N(e,t,n){let o=T(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(c,p,m)=>s`<button
      type="button"
      id=${di(e,t,p)}
      ?disabled=${m}
      aria-label="${n} ${p}"
      @click=${()=>Rf(e,t,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${di(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Sf(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function B(e,t,n){let o=Tf(e),i=re(e.of??"run",e.at);return s`${$e(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}function ec(e){let t=j(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${d({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${d({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${Mf(e)}
    ${R({of:e,name:"density",pointers:["/measured_density"],summary:`Density measured${t&&`: ${t}`}`,body:()=>d({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Pf=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],tc={after:"",mass:""},nc=3,Af={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:nc},()=>tc)}}};function Df(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Mf(e){let t=Df(e);return s`${y({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Pf,puts:o=>({...H(e,"",["drying","water_lost_in_cure"]),...Af[o]})})}
  ${t==="share"?s`<div class="row">
          ${d({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${d({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${d({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?Of(e):u}`}function Of(e){let t={of:e,at:"/drying/weighings",least:nc};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${T(t).map((n,o)=>s`<div class="row named" id=${L(t,o)}>
          ${d({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${d({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${N(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${B(t,"One more weighing",()=>I(t,tc,"weighing"))}`}var Ff=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],mi=e=>mn(e).map(t=>[t.id,t.name]),oc=["unsaid","Not given"],ic=["none","Holds none"],rc=e=>e===void 0?"unsaid":e==="none"?"none":"some",Lf=e=>t=>t==="some"?e:t==="none"?"none":void 0;function sc(e,t){return os(e,`${t}/contains_fat`,[oc,ic,["some","Holds fat"]],mi(e))}function os(e,t,n,o){let i=rc(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${y({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:Lf({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${Le({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${d({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Ef=[oc,ic,["some","Holds acid"],["typed","By what it takes up"]],Cf={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function is(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":rc(g(e,n));return s`${y({of:e,question:"Acid in it",at:n,chosen:o,answers:Ef,puts:i=>Cf[i]})}
  ${o==="some"?s`<div class="row">
          ${Le({label:"Which acid",of:e,at:`${n}/acid`,answers:Ff.map(i=>[i,i]),unsaid:"choose ..."})}
          ${d({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${d({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?rs(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function rs(e,t,n){let o=g(e,t)===!0?"yes":"no";return y({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var If=["tsp/lb","tbsp/lb","tsp/kg"],fi=["%","g/kg",...If].flatMap(e=>[`${e} of fats`,`${e} of batter`]),lc=[...fi,"% of finished soap","g/kg of finished soap"];function ac(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function hi(e,t,n,o,i=!1){let r=V(e,t),[l,c]=ac(j(e,t),o),p=a.typed?.key===r?a.typed.text:l,m=Ve(e,t),h=(k,D)=>{let O=`${k.trim()} ${D}`.trim();Z(e,t,i&&!k.trim()?void 0:O),Ae()},$=k=>{let D=k.target.value,[O,xe]=ac(D,o);f({typed:{key:r,text:D}}),h(O,xe||c)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${J(p)}
        @input=${$}
        @blur=${ts}
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
  </div>`}function Bf(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Wf=.01+1e-9;function gi(e,t){let{sum:n,unread:o}=Bf(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Wf?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var pc=(e,t)=>mn(e).find(n=>n.id===t)?.name??t,uo=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),$i=e=>T(uo(e));function dc(e){let t=$i(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>jf(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?gi("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?fc(e):B(uo(e),"Add a fat",()=>mc(e,t.length))} ${qf(e)}
  </section>`}function jf(e,t,n){let o=`/fats/${t}`,i=pc(e,String(n[t].fat??""))||"Which fat?",r=re(e,`${o}/fat`)??re(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${L(uo(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${V(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?ss():mc(e,t)}
      >
        ${i}
      </button>
      ${d({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${N(uo(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?fc(e):u}
    ${R({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Nf(n[t])}`,body:()=>zf(e,t)})}
  </li>`}function mc(e,t){f({picking:{of:e,row:t,text:""}}),pi(Re("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function ss(){let e=a.picking;f({picking:void 0}),e&&pi(_t(e.of,e.row<$i(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function uc(e,t){let{row:n}=a.picking,o=$i(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};lo(uo(e),`${pc(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],_t(e,`/fats/${n}/share`))}var _i=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function cc(e,t){let n=_i(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>_i(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function fc(e){let{row:t,text:n}=a.picking,o=$i(e).map(p=>p.fat),i=mn(e).filter(p=>cc(p,n)!==void 0),r=i.filter(p=>!o.includes(p.id)||o[t]===p.id);return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${p=>{a.picking.text=p.target.value,Ae()}} @keydown=${p=>{p.key==="Escape"&&ss();let m=r.length===1?r[0]:r.find(h=>_i(h.name)===_i(n.trim()));p.key==="Enter"&&m&&uc(e,m.id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${ss}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(p=>{let m=o.includes(p.id)&&o[t]!==p.id,h=cc(p,n);return s`<button
          type="button"
          ?disabled=${m}
          aria-pressed=${o[t]===p.id?"true":u}
          @click=${()=>uc(e,p.id)}
        >
          ${p.name}${h===p.name?"":`, ${h}`}${m?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function Nf(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Uf=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Hf={published:void 0,one:"",range:{low:"",typical:"",high:""}};function zf(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(c,p)=>d({label:c,of:e,at:p,number:!0,short:!0});return s` ${d({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${y({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Uf,puts:c=>Hf[c],hint:Jf(e,j(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?rs(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Jf(e,t){let n=mn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function qf(e){let t=Nr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=j(e,"/own_fats");return R({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>d({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var hc="danger-of-superfat";function gc(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${d({label:"Superfat: of all that is fat, left without lye",of:e,at:"/superfat",unit:"%",described_by:Ut(e).length?hc:void 0})}
    </div>
    ${io(e,hc)} ${Vf(e)} ${Xf(e,t)}
  </section>`}function Vf(e){let t=dt(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${y({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Kf(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>Gf(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${gi("The two",t.map(i=>i.share))}
        </p>`:u}`}function Kf(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function Gf(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=re(e,i)??re(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?d({label:`${r}: share of the saponifying`,of:e,at:`${i}/share`,unit:"%",hint:"By equivalents, not by weight."}):u}
      ${d({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${R({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${Yf(t.purity_range)}`,body:()=>Qf(e,i)})}
  </div>`}var Yf=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function Qf(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${y({of:e,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${d({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${d({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var Zf={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function Xf(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(Zf);return s`${y({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:th(t)})}
    <div class="row">${n.map(r=>eh(e,r))}</div>`}function eh(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?d({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?d({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):d({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function th(e){if(!(!e||a.is_old))return`It now makes a strength of ${v(e.lye_strength_percent,1)} %; ${v(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${v(e.water_percent_of_fats,1)} % of the fats.`}function $t(e,t,n){let o=nh(e,t);return R({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${ih(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${_c(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>rh(e,i,r))}
        ${d({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function nh(e,t){let n=dt(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var as={name:"",share:""},oh={unsaid:void 0,one:"",many:[as]};function ih(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...as,name:o}]:oh[l];return s`${y({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?d({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${_c(e,t,"INCI name","One more INCI name")}`:u}`}function rh(e,t,n){return y({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function _c(e,t,n,o,i){let r={of:e,at:t};return s`${T(r).map((l,c)=>s`<div class="row named" id=${L(r,c)}>
        ${d({label:`${n} ${c+1}`,of:e,at:`${t}/${c}/name`})}
        ${d({label:`Share ${c+1}`,of:e,at:`${t}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${c}`,c)??u} ${N(r,c,String(l.name||`${n} ${c+1}`))}
      </div>`)}
  ${B(r,o,()=>I(r,as,n))}`}var sh=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:hh},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:uh},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:ch},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:ph}];function $c(e){return sh.map(t=>{let n={of:e,at:`/${t.list}`},o=T(n),i=(r,l)=>s`<li class="formula-row" id=${L(n,l)}>
        ${lh(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${B(n,t.add,()=>I(n,ah(t),t.add.replace("Add ","")))}
    </section>`})}function ah(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function lh(e,t,n,o,i){let r=`/${t.list}/${i}`,l=re(e,r),c=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${d({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:hi(e,`${r}/rate`,"How much",fi)}
      ${N(n,i,c)}
    </div>`}function ls(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return y({of:e,question:"Goes into",at:i,chosen:r,answers:n,puts:c=>c,hint:o||r?void 0:"The batter, unless you name another place."})}var bc=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function us(e,t,n){let o=(l,c,p)=>l?`${c}${String(l)}${p}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return R({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${d({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${d({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${hi(e,`${t}/limit`,"The most that the supplier's document allows",lc,!0)}`})}function cs(e,t,n,o){let i=(l,c)=>l===void 0?"":l==="none"?`no ${c}`:c,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return R({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${sc(e,t)} ${o?is(e,t):u}`})}var bi=(e,t,n)=>$t(e,t,String(n.name||"it"));function uh(e,t,n){return s`${ls(e,t,bc,!0)}
    <div class="folds">${cs(e,t,n,!0)} ${us(e,t,n)} ${bi(e,t,n)}</div>`}function wc(e,t,n){return R({of:e,name:`${t} place`,pointers:[`${t}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>ls(e,t,bc,!1)})}function ch(e,t,n){return s`<div class="folds">
    ${us(e,t,n)} ${bi(e,t,n)} ${wc(e,t,n)} ${cs(e,t,n,!1)}
  </div>`}function ph(e,t,n){return s`${mh(e,t)}
    <div class="folds">
      ${us(e,t,n)} ${bi(e,t,n)} ${wc(e,t,n)} ${cs(e,t,n,!0)}
    </div>`}var dh=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function mh(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${y({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${Le({label:"Which oil",of:e,at:`${n}/fat`,answers:mi(e),unsaid:"choose ..."})}
            ${d({label:"g of oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${y({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:dh,puts:l=>l,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var fh=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function hh(e,t,n){let o=(i,r,l)=>R({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${_h(e,t,n)}
    ${ls(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${bh(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>gh(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>is(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>d({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${bi(e,t,n)}
    </div>`}function gh(e,t){let n=g(e,t)===!0?"ice":"liquid";return y({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function _h(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...H(e,t,["replaces","rate"]),[r]:""});return s`${y({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:$h,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${d({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?hi(e,`${t}/rate`,"Rate",fi):u}`}var $h=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function bh(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(c,p)=>d({label:c,of:e,at:`${n}/${p}`,unit:"%",short:!0});return s`${y({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${os(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...mi(e)])}
          <div class="row">
            ${d({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${Le({label:"Built-in figures of",of:e,at:n,answers:fh.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var ps=!1;function yc(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!ps&&yh(),{workings:wh(n?.workings,e),complaint:n?.complaint,is_old:o}}function wh(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function yh(){let{plan:e,planned:t}=a;if(!(!e||!t)){ps=!0;try{let{how:n}=await el(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{ps=!1}}}function x({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>rn("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${c?s`<div class="sum" id=${p}>${i?vc(i):vh(o)}</div>`:u}
  </div>`}var Vt=(e,t,n)=>x({key:e,label:t,shown:["",""],of:n});function vh(e){let{workings:t,complaint:n,is_old:o}=yc(e);return t.length?s`<div class=${o?"old":""}>${t.map(vc)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function vc({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
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
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var Rn="/pipe/beads",ae=`${Rn}/tip`,bt={at:`${Rn}/moves`,in_order:!0},ds="\0own",Tc={tip:"",bead_to_opening:"",moves:[]},Ee=(e,t)=>({name:e,label:t,kind:"length"}),xc={name:"count",label:"How many",kind:"count"},kc=Ee("circle_radius","Radius of their circle"),fs={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Ee("diameter","Across"),Ee("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[Ee("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Ee("start_radius","Radius at the start"),Ee("end_radius","Radius at the end"),Ee("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Ee("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[xc,kc,Ee("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[xc,kc,Ee("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Ee("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function Sc(e){return s`${kh()} ${hs()?Sh():u}
    ${d({label:"Bead \xF7 tip opening",at:`${Rn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${T(bt).map((t,n)=>Dh(t,n,e))}</div>
    ${Fh()}`}var hs=()=>typeof g("run",ae)=="object";function xh(){let e=g("run",`${Rn}/own_tips`);return e===void 0?du():mu(String(e))}function kh(){let e=n=>n===ds?K("run","a tip of your own",ae,{name:"",round:{radius:""}},Pc):Z("run",ae,n),t=xh().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${Le({label:"Tip",at:ae,answers:[...t,[ds,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:hs()?ds:void 0})}
  ${hs()?u:R({name:"tips",pointers:[`${Rn}/own_tips`],summary:"Tips of a file of your own",body:()=>d({label:"File of tips",at:`${Rn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var Rc=gt("run",ae,"own"),Pc=qt(Rc),ms=[["round","Round"],["star","Star"],["outline","Another outline"]],wi={x:"",y:""},Th={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[wi,wi,wi]};function Sh(){let e=ms.map(([n])=>n).find(n=>g("run",`${ae}/${n}`)!==void 0),t=n=>({...H("run",ae,ms.map(([o])=>o)),[n]:Th[n]});return s`<div class="part" id=${Rc} role="group" aria-label="My own tip">
    ${E("run",ae)} ${d({label:"What you call the tip",at:`${ae}/name`})}
    ${y({question:"Opening of the tip",at:ae,is_told_elsewhere:!0,chosen:e,answers:ms,puts:t})}
    ${e?Ph(e):u}
    ${R({name:"hand",pointers:[Sn,`${ae}/note`],summary:"Correction for your hand",body:Rh})}
  </div>`}var Sn=`${ae}/hand`;function Rh(){let e=t=>g("run",t)!==void 0;return s`<div class="row">
      ${d({label:"Correction for your hand",at:`${Sn}/correction`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${e(`${Sn}/correction`)?d({label:"From so many trials",at:`${Sn}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${e(Sn)?s`<button
            type="button"
            @click=${()=>K("run","correction removed",Sn,void 0,Pc)}
          >
            Leave the correction out
          </button>`:u}
    ${d({label:"Note on the tip",at:`${ae}/note`,optional:!0})}`}function Ph(e){if(e==="outline")return Ah();let t=(n,o)=>d({label:o,at:`${ae}/${e}/${n}`,unit:"mm",short:!0});return s`<div class="row">
    ${e==="round"?t("radius","Radius of the opening"):s`${d({label:"Points",at:`${ae}/star/points`,count:!0,short:!0})}
          ${t("outer_radius","Radius to the points")} ${t("inner_radius","Radius to the notches")}`}
  </div>`}function Ah(){let e={at:`${ae}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${T(e).map((t,n)=>s`<div class="row" id=${L(e,n)}>
          ${d({label:`Corner ${n+1}, x`,at:`${e.at}/${n}/x`,unit:"mm",short:!0})}
          ${d({label:`Corner ${n+1}, y`,at:`${e.at}/${n}/y`,unit:"mm",short:!0})}
          ${N(e,n,`corner ${n+1}`)}
        </div>`)}
    ${B(e,"One more corner",()=>I(e,wi,"corner"))}`}function Dh(e,t,n){let o=fs[String(e.move)],i=`${bt.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${L(bt,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${N(bt,t,r)}
    </div>
    ${E("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>Mh(i,l))}
      ${d({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Oh(t,n)}
  </div>`}function Mh(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return d({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function Oh(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==T(bt).length)return u;let i=o.length_mm>0?`${v(o.length_mm/10,1)} cm of bead`:"";return x({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ne(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function Fh(){let e=o=>({move:o,...Object.fromEntries(fs[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=V("run",bt.at),n=re("run",bt.at);return s`${$e(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(fs).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>I(bt,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var Lh={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function co(e,t){return Lh[e].map(({name:n,label:o,unit:i,optional:r})=>d({label:t?`${t}: ${o.toLowerCase()}`:o,at:`/losses/${e}/${n}`,unit:i,short:!0,optional:r}))}var Eh=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]);function po(e){let t=`/${e}/temperatures`,n=(o,i)=>d({label:i,at:`${t}/${o}`,unit:a.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return R({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${E("run",t)}
        <div class="row">
          ${n("room_at","Room and dry alkali")} ${n("water_at","Water")}
          ${d({label:"Of the water, as ice",at:`${t}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_below","Batter must stay below")}
          ${Le({label:"The lye cools in",at:`${t}/cooled_in`,answers:Eh,unsaid:"not given",optional:!0})}
        </div>`})}var Ac={holds:"",net:""},Ce=()=>_(a.run.now,"/pipe")!==void 0;function Dc(){let e=_(a.run.now,"/pour/formula")??"";kn("run","Topping added",n=>W(W(n,"/pipe",{formula:e,fills_headspace:"",whip:Ac}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),Re("lane-pipe"))}function Ch(e){let t=Object.keys(_(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",_(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>_(o,i)===void 0?o:W(o,i,void 0),e)}function Ih(){kn("run","Topping removed",Ch,Re("topping-back"))}function Mc(){let e=a.past.at(-1)?.run?.now;return!e||_(e,"/pipe")===void 0||Ce()?u:s`<button type="button" id="topping-back" @click=${Ko}>Bring the topping back</button>`}function gs(){return s`${Hh()} ${po("pipe")}
    <p class="choice"><button type="button" @click=${Ih}>Take the topping away</button></p>`}function _s(e){return s`<h3>How large is the topping?</h3>
    ${E("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${be({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Ac},body:Bh})}
      ${be({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Wh})}
    </div>
    ${be({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Tc,body:()=>Sc(e)})}
    ${e?Nh(e):u}`}function Bh(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${T(e).map((t,n)=>s`<div class="row" id=${L(e,n)}>
            ${d({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${N(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${B(e,"One more trial",()=>I(e,"","trial"))}
    <div class="row">
      ${d({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${d({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${E("run","/pipe/trials/weigh_cup")}`}function Wh(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${y({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${d({label:"Across",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${d({label:"High",at:`${e}/height`,unit:"mm",short:!0})}
      ${d({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var jh={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Nh(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>x({key:`pipe.by.${i}`,label:jh[i],note:o(l),shown:ne(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${Uh(e)}`}function Uh(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=v(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&_(a.run.now,`${o}/correction`)!==t.correction,l=()=>K("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function $s(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${d({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${d({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${E("run","/pipe/whip")}
    ${d({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:e?.loads?`${e.loads} bag loads`:void 0})}`}function Oc(){return s`<h3>What is lost of it</h3>
    <div class="row">${co("pipe")}</div>`}function Hh(){let e=(n,o,i,r=!1)=>d({label:n,at:o,unit:i,optional:r,short:!0});return R({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>s` <div class="items">
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
      </div>`})}function zh(e,{at:t,figure:n}){let o=_(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function yi(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,zh(e,t))}>It is really so: keep it</button>`:u}var Fc=e=>[...a.files?.runs??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function vi(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${_n(t.map(Fc))}.</p>`:u}function xi(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${_n(t.map(Fc))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}function Jh({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,h])=>h),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,c=l-r-n,p=[e.left-n,c,e.right-e.left+2*n,-e.floor+n-c],m=(h,$)=>F`<path class="shaded pour" fill-rule="evenodd" d=${$} /><path class="wall ${h}" fill-rule="evenodd" d=${$} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${p.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${m("above",Kn(t,l))}${m("side",Kn(e.loops))}
    </svg>
  </div>`}function Pn(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${Jh(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${P(ne(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${P(ne(a.units,i.total_ml))} together`:u},
      ${P(ie(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${P(ne(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var qh={mm:"in",g:"oz","\xB0C":"\xB0F"},Vh={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ki(e,t,n=""){let o=bs(e);if(o)return o.unit??"";let i=bn(_(S(),e));return Vh[t]?.test(i)?i:n||(a.units==="us"?qh[t]??t:t)}var Ti=()=>f({typed:void 0}),An=e=>`d${e.replaceAll("/","-")}`,bs=e=>a.typed?.key===An(e)?a.typed:void 0,Si=e=>bs(e)?.text??String(_(S(),e)??"");function wt(e){let{complaint:t}=A();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function ws(e,t,n,o){let{pointer:i}=e,r=l=>{let c=l.target.value,p=e.unit?ki(i,e.unit,e.unit_before):"";f({typed:{key:An(i),text:c,unit:p}}),q(i,Kh(e,c,p))};return s`<input
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
    aria-invalid=${wt(i)?"true":"false"}
  />`}function Kh(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&ai(t)?`${t.trim()} ${n}`:t}function we(e,t){let n=An(e.pointer),o=wt(e.pointer),i=Gh(e.pointer)??e.hint,r=e.unit?` (${ki(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${ws(e,o||i?`${n}-said`:void 0,t)}
    ${$e(n,o,i)}
  </div>`}function Gh(e){let t=_(S(),e),n=bs(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Ri(e){let t=e.toLowerCase(),{file:n,shipped:o}=A().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function mo(e){let{open:t}=A();try{if(await Bt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await it()})}catch(n){if(!(n instanceof w))throw n;return Fr(n)}a.run.file&&(ze(),Q()),e(t.file)}var nt="/shape/points",Lc=500,yt=(e,t)=>[nt,e,...t?[t]:[]].join("/"),Ec=e=>Array.from({length:e.least},()=>({}));function Cc(e){let t=he(S(),nt),n=Qh(),{complaint:o}=A(),i=o?.field===nt&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${ki(yt(-1,r.name),r.unit,Ic(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>Yh(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=Lc} @click=${()=>Ai(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function Yh(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=Zh(t),r=l=>{let{name:c,label:p,unit:m}=e.columns[l],h={label:p,pointer:yt(t,c),unit:m,unit_before:Ic(e,t,c)},$=`${p}, ${n.has(t)?o:`point ${t+1}`}`;return ws(h,i?`point-${t}-said`:void 0,Xh(e,t,l),$)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Ai(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Bc(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function Qh(){let e=[...zn(S()),...Wo(S())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function Zh(e){let{complaint:t}=A();return wt(yt(e))??(t?.about===yt(e)?t.line:void 0)}function Ic(e,t,n){let o=(i,r)=>bn(_(S(),yt(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Pi(e,t){queueMicrotask(()=>document.getElementById(An(yt(e,t)))?.focus())}function Ai(e,t){let n=[...he(S(),nt)];n.length>=Lc||(n.splice(t,0,{}),Ti(),q(nt,n),Pi(t,e.columns[0].name))}function Bc(e,t,n=0){let o=he(S(),nt).filter((i,r)=>r!==t);Ti(),q(nt,o.length?o:[{}]),Pi(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function Xh(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Si(yt(t,o))&&!Si(yt(t,i));if(r.key==="Enter"&&r.shiftKey)Ai(e,t+1);else if(r.key==="Enter"&&n===0)Pi(t,i);else if(r.key==="Enter"&&t+1<he(S(),nt).length)Pi(t+1,o);else if(r.key==="Enter")Ai(e,t+1);else if(r.key==="Backspace"&&l&&he(S(),nt).length>1)Bc(e,t,t>0?1:0);else return;r.preventDefault()}}var ys={weighings:[""]},vs=/\.(3mf|gltf|glb)$/i;function Di(e){let t=lt(e);return t?{kind:e,points:Ec(t)}:{kind:e}}var eg=()=>q("/water",ys),Ke=e=>De(S(),e),fo=()=>Hn(S());function Wc(e){let{open:t,answer:n,is_old:o}=A();return s`${vn(t,()=>{mo(e)})} ${xn(t)}
    ${t.shipped?u:xi(a.files?.moulds.find(i=>i.file===t.file))}
    ${Ke("shape")&&Ke("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${Ke("shape")?se("Shape",fo(),Object.entries(cl),tg):u}
    <div class="beside ${lt(fo())?"rows":""}">
      <div>
        ${xs()} ${Ke("shape")?og():u} ${Ke("mesh")?ig():u}
        ${ks()} ${Ke("water")?sg():u} ${lg()}
      </div>
      <div class="stays">${Pn(n,o,Nc())} ${ug(e)}</div>
    </div>`}function tg(e){let t={...A().shapes,[fo()]:S().shape};b(A(),{shapes:t,answer:void 0}),q("/shape",t[e]??Di(e))}function ng(){let{shipped:e,file:t}=A().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function xs(){let e=ng();return we({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function og(){let e=fo(),t=lt(e);return s`${nn(e).length?s`<div class="row">
          ${nn(e).map(n=>we({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?Cc(t):u}`}function ks(e=hr(S())){return s`<div class="row">
      ${e?u:we({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${we({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${we({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${we({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Ts=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Ss=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function ig(){let e=o=>String(_(S(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=wt(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${se(o,e(i),r,c=>q(`/mesh/${i}`,c||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=wt("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${vs.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Ts)} ${t("Which way is up","up",Ss)}
    ${e("role")==="body"?rg():u}
    <div class="row">
      ${we({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${we({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function rg(){let e=_(S(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${se("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>q("/mesh/on_board",t==="yes"?!0:void 0))}`}function sg(){let e=_(S(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":_(e,"/depth")!==void 0?"depth":"below_brim",n=r=>q("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=_(S(),"/water/weighed_in"),i=t===void 0||t==="brim"?wt("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${we({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${se("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?we({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?we({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${se("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>q("/water/weighed_in",r))}
    <div class="row">
      ${he(S(),"/water/weighings").map((r,l)=>we({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},ag(l)))}
    </div>
    ${A().complaint?.field==="/water/weighings"?s`<p class="complaint">${A().complaint.line}</p>`:u}
    <button type="button" @click=${jc}>One more round</button>`}function jc(){let e=he(S(),"/water/weighings").length;q(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var ag=e=>t=>{t.key==="Enter"&&(e+1===he(S(),"/water/weighings").length?jc():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function lg(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${Ke("shape")?u:e("Add measures, as a check",()=>q("/shape",Di("block")))}
    ${Ke("shape")&&Ke("mesh")?e("Leave the measures out",()=>q("/shape",void 0)):u}
    ${Ke("water")?e("Leave the water out",()=>q("/water",void 0)):e("Add weighed water",eg)}
  </div>`}function Nc(){let e=Wo(S()).length;return e?[...Jn(S()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Jn(S())}function ug(e){let t=String(S().name??"").trim(),n=Ri(t),{open:o,answer:i,is_old:r,complaint:l}=A(),c=i&&!r&&!l&&!Nc().length&&t&&!n,p=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{mo(e)}}>
      ${p?"Save the change":"Use this mould"}
    </button>
    ${p?s`<p class="aside">It stays in ${p}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${Rs(t,n)}
    ${l?s`<p class="alarm" role="status">${cg(l.field)}${l.line}</p>
            ${yi(S(),l.keep,q)}`:u}`}var Rs=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function cg(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=nn(fo()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var pg=200*2**20;async function Uc(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),q("/name",e.name.replace(/\.\w+$/,"")),e.size>pg){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return b(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await sl(e,o=>b(t,{share:o}));b(t,{share:1,upload:n.file}),await zc(t)}catch(n){b(t,{complaint:n instanceof w?n.message:String(n)})}}async function zc(e){let t=e.questions+1;b(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await ln({file:n,unit:o,role:i,up:r});t===e.questions&&b(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(t!==e.questions)return;let c=o?e.sizes:hg(l.complaint),p=c.length&&!o?void 0:fe(l.complaint);b(e,{sizes:c,complaint:p,is_measuring:!1})}}async function dg(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await tl({file:n,unit:o,up:i});t===e.questions&&b(e,{inspection:r})}catch(r){if(!(r instanceof w))throw r;t===e.questions&&b(e,{complaint:fe(r.complaint)})}}function mg(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(fg)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{dg(e)}}>List every defect of the mesh</button>`}var fg=({text:e})=>s`<li>${e}</li>`;function hg({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>v(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Ps(e,t){b(e,t),zc(e)}function Jc(e,t){let n=l=>{let c=l.target;Uc(c.files?.[0]),c.value=""},o=l=>{l.preventDefault(),Uc(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?gg(a.mesh,e,t):u}`}function gg(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!vs.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${se("Unit of the file's numbers",e.unit,i,r=>Ps(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?mg(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${se("Role",e.role??e.answer?.gauge.role,Ts,r=>Ps(e,{role:r}))}
            <h4>Which way is up</h4>
            ${se("Up",e.up??"",Ss,r=>Ps(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${Pn(e.answer)} ${_g(e,t,n)}`:u}`}var qc=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function _g(e,t,n){let o=String(S().name??"").trim(),i=Ri(o),r=o&&!i&&!e.is_keeping;return s`${xs()} ${ks(qc(e))} ${Rs(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Hc(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>Hc(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Hc(e,t,n){b(e,{is_keeping:!0});try{let o=$g(e,await al(e.upload,wg(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await bg(o))return t(o);un(o,"mesh",A().title),await mo(n),b(e,{complaint:a.mould?.complaint?.line})}catch(o){b(e,{complaint:o instanceof w?o.message:String(o)})}b(e,{is_keeping:!1})}function $g(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=S();return{...i,...qc(e)||o===void 0?{}:{cavities:o},mesh:n}}async function bg(e){try{return await Ne({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof w&&t.status===422)return!1;throw t}}var wg=e=>tn(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Mi={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Vc={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Kc(e){pt();let t={...Vc,shape:Di("block")};e==="mesh"?un(Vc,"mesh",Mi[e]):un(e==="water"?{...t,water:ys}:t,"form",Mi[e]),Fi()}async function Gc(e,t){pt(),await Nl(e,t),Fi()}async function Oi(e){pt(),await Ul(e),Fi()}function yg(e){un(e,"form","More about this mould"),Fi()}function Fi(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Yc(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?Jc(e,yg):Wc(e)}
  </section>`}var As=()=>f({chosen_mould:void 0});function ho(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:t};f({chosen_mould:i}),vg(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function vg(e){try{let[t,n]=await Promise.all([ln({file:e.file}),ue(e.file)]);b(e,{answer:t,owned:e.shipped?1:Number(Y(n.text)?.owned??1)})}catch(t){b(e,{complaint:t instanceof w?t.message:String(t)})}}var xg=e=>a.files?.moulds.find(t=>t.file===e);function Qc(e,t){let n=()=>t(async()=>{await Gc(e.file,e.shipped),As()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${vi(xg(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Pn(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:kg(e,t)}
    </div>
  </section>`}async function Zc({name:e,mould:t,formula:n}){let o=a.files?.moulds.some(c=>c.file===t&&!c.shipped),[i,r]=await Promise.all([Ne({file:t}),o?ue(t):void 0]),l=Number(Y(r?.text??"")?.owned??1);await qr({name:e,mould:t,formula:n,...Xc(i,l)})}function kg(e,t){let n=o=>()=>t(()=>qr({mould:e.file,name:e.name,formula:o,...Xc(e.answer.gauge,e.owned)}));return s`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>s`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function Xc(e,t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}var Kt={pour:"base",pipe:"topping",apart:"formula"},Tg=[...Xn,...eo,...Object.values(Kt),"describing","chosen"];function go(){let{view:e,run:t,formula_of:n,formulas:o,mould:i,chosen_mould:r}=a;if(e!=="reading")return Je(e)?{name:e,file:t.file,of:t}:e==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:e==="moulds"&&r?{name:"chosen",file:r.file,of:r}:e!=="formula"?{name:e}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:Kt[n],file:t.file,of:t}}var Ge=({name:e,file:t})=>`#${e}${t?`/${t.split("/").map(encodeURIComponent).join("/")}`:""}`;function Ds(e){let[t,...n]=e.slice(1).split("/");if(Tg.includes(t))try{return{name:t,file:n.map(decodeURIComponent).join("/")||void 0}}catch{return}}function tp(e){if(!e)return{};let t=e.name;return Je(t)?{run:e.file,view:t}:{run:e.name===Kt.pour||e.name===Kt.pipe?e.file:void 0,view:Se(t)?t:"reading"}}async function np({name:e,file:t}){if(!(!(e===Kt.apart&&a.formulas.apart?.file===t)&&!await Vr()))try{await Sg(e,t)}catch(o){if(!(o instanceof w||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function Sg(e,t=""){let n=e;if(Je(n))return ep(t,n);let o=["pour","pipe"].find(i=>Kt[i]===e);if(o)return await ep(t,"formula"),ft(o);if(e===Kt.apart)return ro(t);await Rg(e,t)}async function ep(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await mt(e,t)}async function Rg(e,t){let n=e;As(),pt(),f({view:Se(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=zo(Te).find(i=>i.id===t);e==="describing"&&o&&await Oi(o),e==="chosen"&&ho(t),Pg()}async function Pg(){try{f({files:await it()}),ti()}catch(e){if(!(e instanceof w))throw e;f({list_complaint:e.message})}}var ye={id:""},le,Ms=!1,Fs=new Map,Li=JSON.parse(sessionStorage.getItem("left")??"{}");function ip(){let e=go();Ms||!e||le&&Ge(le)===Ge(e)||(Ei(),rp(e))}function rp(e){let t=!le||le.name===e.name&&le.of!==void 0&&le.of===e.of;if(le=e,t)return Dn();ye={id:crypto.randomUUID(),before:location.hash},Fs.set(ye.id,e.of),history.pushState(ye,"",Ge(e)),requestAnimationFrame(Dg)}function Dn(){le&&(ye.id||(ye={id:crypto.randomUUID()}),Fs.set(ye.id,le.of),history.replaceState(ye,"",Ge(le)))}var Ag="button, input, select, summary, a[href], [tabindex]",Os=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),sp=e=>[...document.querySelectorAll(`#main :is(${Ag})`)].filter(t=>Os(t)===e);function Ei(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Li[ye.id]={scroll:scrollY}:Li[ye.id]={scroll:scrollY,words:Os(e),nth:sp(Os(e)).indexOf(e)}}function Dg(){scrollTo(0,0),document.activeElement?.closest("#main")||ap()}function ap(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function lp(){let{scroll:e,words:t,nth:n=0}=Li[ye.id]??{scroll:0},o=t===void 0?void 0:sp(t)[n];o?o.focus({preventScroll:!0}):ap(),scrollTo(0,e)}var Ci=e=>up({name:e,file:Je(e)?a.run.file:void 0});async function up(e){Ei(),await Ls(e,()=>{let t=go();t&&!(le&&Ge(le)===Ge(t))&&rp(t)})}async function Ls(e,t){Ms=!0;try{await np(e)}finally{Ms=!1,t()}}function cp(e){ye.before===Ge(e)?history.back():up(e)}var op=Promise.resolve();function Mg(e,t){Ei();let n=()=>history.state?.id!==e?.id;op=op.then(async()=>{if(!t)return Dn();if(n())return;let o=e?Fs.get(e.id):void 0,i=[a.run,a.formulas.apart].find(r=>r&&r===o);await Ls(i?{...t,file:i.file}:t,()=>{le=go(),!n()&&(ye=e??{id:crypto.randomUUID()},Dn(),requestAnimationFrame(lp))})})}function pp(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Ua()||Mg(e.state,Ds(location.hash))}),addEventListener("pagehide",()=>{Ei(),sessionStorage.setItem("left",JSON.stringify(Li))})}async function dp(){let e=Ds(location.hash);e&&(ye=history.state??{id:""}),await Du(tp(e)),e&&Og(e)&&await Ls(e,()=>{le=go(),Dn(),requestAnimationFrame(lp)}),await Mu()}var Og=e=>!le||Ge(le)===Ge(e);function Ii(){let e=a.complaint;return s`<div class="complaints" role="status">
    ${e?s`<p class="alarm">
              <strong>${a.plan?"The figures below are out of date.":"No figures yet."}</strong>
              ${Es(e.field)}${fe(e)}
            </p>
            ${e.is_fault?s`<button type="button" @click=${Cs}>Ask again</button>`:u}
            ${zt("run")?yi(a.run.now,e.keep,(t,n)=>Z("run",t,n)):u}
            ${Fg()?s`<button type="button" @click=${Eg}>Go to the field</button>`:u}`:u}
  </div>`}function Es(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Cs(){Q(),a.run.failed&&Me()}function Fg(){if(mp())return!0;let e=Jt();return e?document.activeElement!==e:Lg()}var Lg=()=>a.view!=="set-up"&&zt("run")&&a.complaint!==void 0&&a.complaint.field!=="",mp=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&zt(e));function Eg(){let e=Jt(),t=mp();if(e)return ci(e);t?ft(t):Ci("set-up"),Cg(()=>ci(Jt()))}function Cg(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var fp=()=>[...Qo().map(e=>vn(e)),...Yo().map(xn)];function hp(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${fp()}${Ii()}
      <p>Reading the formula ...</p>
      ${Bs(e)}`;let n=a.plan&&hn(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${fp()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Ig(e)}</p>
    <div class="choice">${Bs(e)}${e==="apart"?Bg():u}</div>
    ${xi(a.files?.formulas.find(i=>i.file===t.file))} ${Wg(e,o,n)} ${Hg(e)}
    ${dc(e)} ${gc(e,o)} ${$c(e)} ${ec(e)}
    <div class="choice">${Bs(e)}</div>`}var Is=()=>String(a.run.now.name??a.run.file);function Ig(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${Is()}".${n}`:o?`Base and topping of "${Is()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Is()}".${n}`}function Bs(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>cp(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function Bg(){return s`<button type="button" @click=${()=>{Kr("pour")}}>Use it as the base</button> ${Ce()?s`<button type="button" @click=${()=>{Kr("pipe")}}>Use it as the topping</button>`:u}`}function Wg(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...jg(e,n),...Ng(e,t)].map(([o,i])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Ug(e)}
  </section>`}function jg(e,t){let n=e==="pipe"?Yr(t,t.whippings[0]):"";return n?[["For one whipping",n]]:X(t.whole)?[["For one batch",Fe(t.whole,t.batch)]]:[]}function Ng(e,t){let n=Ut(e).length?" \u26A0":"";return[["Fats",P(M(a.units,t.fats_g))],["Superfat comes out at",`${et(t.superfat_percent.effective)}${n}`],...yn(t).map(({one:o})=>[o.name,P(tt(a.units,o))])]}function Ug(e){let t=a.complaint;if(!t)return s`<div role="status"></div>`;let n=zt(e),o=n&&t.field!==""&&document.activeElement!==Jt();return s`<div role="status" class="asks">
    <p class="alarm">
      <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${Es(t.field)}${fe(t)}
    </p>
    ${t.is_fault?s`<button type="button" @click=${Cs}>Ask again</button>`:u}
    ${o?s`<button type="button" @click=${()=>Jt()?.focus()}>Go to the field</button>`:u}
  </div>`}function Hg(e){return s`<section class="card" aria-label="Name">
    ${d({label:"Name",of:e,at:"/name",wide:!0})}
    ${R({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>d({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var _o=[],$o=()=>_o.at(-1);function Ws(e){_o=[..._o,e],f({list_told:e.words}),oe(e.words)}async function _p(){let e=$o();e&&(await e.undo(),_o=_o.slice(0,-1),f({list_told:""}),oe("Undone"),await Mn())}var Mn=async()=>f({files:await it()});async function $p(e,t){let{$schema:n,...o}=JSON.parse((await ue(t.file)).text),i=`${t.name||t.file}, copy`,r={...o,name:i,...e.name==="run"?{id:crypto.randomUUID()}:{}},{file:l}=await ut({kind:e,name:e.new_name(qn(e,r)),text:G(r),from:t.file});return await Mn(),Ws({words:`Copied ${t.name||t.file}.`,undo:async()=>{await lr(l,!0)}}),l}var bp=e=>/(\.(run|formula))?\.json$/.exec(e)?.[0]??"",bo=e=>Lt(e).slice(0,-bp(e).length||void 0),wp=(e,t)=>Ft(e)+t+bp(e),zg=e=>[a.run,...ee.map(t=>a.formulas[t])].find(t=>t?.file===e);async function yp(e,t,n){let o={name:t.name,note:t.note,stem:bo(t.file)};await gp(e,t.file,n),await Mn();let i=wp(t.file,n.stem);Ws({words:`Changed ${n.name||i}.`,undo:()=>gp(e,i,o)})}async function gp(e,t,{name:n,note:o,stem:i}){let r=zg(t),l=r??await He(e,t),{note:c,...p}=l.now,m=o?{...p,name:n,note:o}:{...p,name:n};if(G(m)!==G(l.now)&&(r&&Wt(),ge(l,m),await Bt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let h=wp(t,i);h!==t&&(await Ga(t,h),r&&Rl(r,h))}async function vp(e,t){let{removed:n}=await lr(e.file,t);a.run.file===e.file&&No(),await Mn(),Ws({words:`Removed ${e.name||e.file}.`,undo:async()=>{await Ya(n)}})}async function de(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof w&&await Mn().catch(()=>{})}}var js=()=>{de(_p)};function On(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&$o()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${js}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var xp=new Map,kp=Promise.resolve();function Tp(e,t=""){let n=`${e}
${t}`,o=xp.get(n);return o||(o=kp.then(()=>Jg(e)),kp=o,xp.set(n,o)),o}async function Jg(e){try{let t=await rt({kind:"glb",gauge:{file:e}}),n=an(await t.arrayBuffer());return Gn(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof w)return;throw t}}var Ns=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Tp(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void Be(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,c=.04*Math.max(o-n,r-i),p=[n-c,-r-c,o-n+2*c,r-i+2*c];Be(s`<svg viewBox=${p.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Kn(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Ns);function Fn(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
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
      @click=${()=>qg(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?Vg(e,r):u}
  </li>`}function qg({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:bo(n)}:void 0})}function Vg(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{de(()=>Gg(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&bo(o.file)===t.stem,l=()=>{de(()=>Yg(e,t))};return s`<div class="acts">
    ${vi(o)} ${Us("Name",t,"name")} ${Us("Note",t,"note")}
    ${Us("Name of the file",t,"stem")}
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
      <button type="button" @click=${()=>{de(()=>Sp(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?Kg(o,t):u}
  </div>`}function Us(e,t,n){let o=`list-${n}`,i=r=>b(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${J(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Kg(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{de(()=>Sp(e,t,!0))}}>Remove it even so</button>
  </div>`}async function Gg(e,t){let n=await $p(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:bo(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function Yg({kind:e,one:t},{name:n,note:o,stem:i}){await yp(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function Sp(e,t,n){let o=e.used_by??[];if(o.length&&!n)return b(t,{used_by:o});try{await vp(e,n),f({list_open:void 0})}catch(i){let r=i instanceof w?i.answer.used_by:void 0;if(!r)throw i;b(t,{used_by:r})}}var Hs=e=>b(a.new_formula,e);function Rp(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>de(async()=>{await i(e.trim()),Hs({name:"",copied:""})});return s`${On("Formulas")}
    <section aria-label="Formulas">
      <ul class="cards">
        ${n.map(Qg)}
      </ul>
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${J(e)}
            @input=${i=>Hs({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(Ou)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Hs({copied:i.target.value})}
          >
            <option value="" .selected=${J(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${J(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Fu(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function Qg(e){let t=e.changed?[`changed ${wn(e.changed)}`]:[];return Fn({kind:on,one:e,facts:t,open:()=>ro(e.file)})}function Zg(e){pt(),ho(e,`Saved in ${e}.`)}function Ap(){let{chosen_mould:e}=a;return s`${On("Moulds")}
  ${e?Qc(e,de):Yc(Zg)??s`${e_()} ${Xg()}`}`}function Xg(){let e=(a.files?.moulds??[]).filter(t=>!t.shipped);return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${e.map(t=>Pp(t,o_(t.file)))}${a.catalogue.map(t=>Pp({file:t.path,name:t.name,note:"",shipped:!0},[`${P(ne(a.units,t.brimful_ml))}, ${t.cavities} in one; ${t.description}`]))}
    </ul>
  </section>`}var Pp=(e,t)=>Fn({kind:Te,one:e,facts:t,picture:e.file,open:()=>Promise.resolve(ho(e.file))});function e_(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${t_()}
    <div class="choice">
      ${Object.entries(Mi).map(([e,t])=>s`<button type="button" @click=${()=>Kc(e)}>${t}</button>`)}
    </div>
  </section>`}function t_(){return zo(Te).map(e=>{let t=String(Y(e.text)?.name??"").trim()||n_(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>de(()=>Oi(e))}>Continue</button>
        <button type="button" @click=${()=>{It(Te,e.id),Ae()}}>Discard it</button>
      </div>
    </div>`})}var n_=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function o_(e){let t=lu(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[P(ne(a.units,t.brimful_ml)),`${t.cavities} in one`]:["measuring ..."]}function Dp(){let e=i_();if(e)return e;let{run:t}=a,n=a.formula_of==="apart"||!(U(t)||t.theirs||t.failed);return a.view==="formula"&&n?r_():t.theirs?Bi(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`):t.failed?Bi(`Not saved: ${t.failed}`):U(t)?Op:zs(t.shipped?Mp:`Saved in ${t.file}`)}var Mp="Built-in example: your first change is saved as a copy.",Op={words:"Saving ...",is_kept:!1},zs=e=>({words:e,is_kept:!0}),Bi=e=>({words:e,is_kept:!1,is_failed:!0});function i_(){let e=a.formulas.apart?"apart":"run",t=Xe(e);if(t)return Bi(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&U(o)))return a.complaint?.file===""?Bi(`Not saved: ${a.complaint.problem}`):Op}function r_(){let e=a.formulas[a.formula_of];return zs(e?e.shipped?Mp:`Saved in ${e.file}`:"")}function Wi(){let{view:e,mould:t,past:n,future:o}=a;return e==="moulds"&&t?Fp(t,Hl,zl):Se(e)?{undo:$o()&&js}:Fp({past:n,future:o},Ko,Ml)}var Fp=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Lp={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},s_={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},a_="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",l_="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Js=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${F`<path d=${e} />`}</svg>`;function Ep(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${Xn.map(t=>Cp(t,Lp[t],s`${Lp[t]}`))}
              </nav>
              ${c_()}`}
    </div>
    ${e?u:p_()}
  </header>`}var u_={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`};function c_(){let e=t=>()=>{f({units:t}),localStorage.setItem("units",t)};return s`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${e(t)}>
          ${u_[t]}
        </button>`)}
  </div>`}function p_(){let{undo:e,redo:t}=Wi();return s`<div class="bar">
    ${a.run.file?d_():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Js(a_)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Js(l_)}<span>Redo</span></button>
    </div>
    ${a.run.file?g_():u}
  </div>`}function d_(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${eo.map(m_)}</div>
  </nav>`}function m_(e){let[t,n]=s_[e],o=f_(e);return Cp(e,o?`${t}, ${o.words}`:t,s`${Js(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function f_(e){if(e==="watch"&&Su())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="set-up"&&h_())return{sign:"\u25CB",words:"missing"}}var h_=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Cp(e,t,n){let o=a.view===e;return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{Ci(e)}}
  >
    ${n}
  </button>`}function g_(){let{words:e,is_kept:t,is_failed:n}=Dp();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}function Vs(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!Ce()?u:s`${ns(e,"Make one pot of lye solution for both",t,{})}
  ${t?d({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Ip(){return s`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${Vs()} ${Ks()} ${Gs()}
  </section>`}function Ks(e){let t={at:"/bottles"},n=T(t);return R({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${e&&_e(e)?` Weights are of ${_e(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${L(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${N(t,i,l)}
            </div>
            ${E("run",r)}
            <div class="row">
              ${d({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${d({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?__(e,i,l):u}
          </div>`})}
        ${B(t,"Use up a bottle",()=>I(t,{name:"",holds:""},"bottle"))}`})}function __(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>x({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${v(i.percent_of_batter,2)} % of the batter`,shown:z(a.units,pe(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}function Gs(){return be({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:$_})}function $_(){let e=g("run","/label/market"),t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${y({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:e,answers:[["EU","In the EU"],["US","In the US"]],puts:b_})}
  ${y({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:w_})}
  ${t==="weighed"?y_():s`<div class="row">
          ${d({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${d({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${d({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${e==="EU"||g("run",qs)!==void 0?ns(qs,"With the e mark",g("run",qs)===!0,!0):u}`}var qs="/label/e_mark";function b_(e){return{...H("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function w_(e){let t=H("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function y_(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${T(e).map((t,n)=>s`<div class="row" id=${L(e,n)}>
            ${d({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${N(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${B(e,"One more piece",()=>I(e,"","piece"))}`}function Bp(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,c=r?"A bar on average, ":"",p=m=>c?c+m.toLowerCase():m;return s`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${x({key:"piece.fresh",label:p("Fresh"),shown:M(a.units,n),of:"piece.fresh_g"})}
    ${o===null?u:x({key:"piece.cured",label:p("Cured"),shown:M(a.units,o),of:"piece.cured_g"})}
    ${r?x({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:M(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
    ${i===null?u:x({key:"piece.label",label:"Net weight for the label",shown:M(a.units,i,0),of:"piece.label_g"})}
    ${l?x({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(m=>v(m,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
    ${t&&t.amount!==null?s`${x({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
          ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${x_(e)} ${v_(e)} ${Gs()}
  </section>`}function v_(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}function x_(e){let t=e.piece.cost?.materials.map(o=>o.name)??[];if(!t.length)return u;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return R({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>s` ${t.map(o=>s`<div class="row">
            ${d({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${d({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}var[jp,Qs]=[440,270],[wo,Ys,ji,Ln]=[64,jp-10,10,Qs-52],k_=6,T_=8;function Wp(e){let t=e/k_,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var En=e=>v(e,1);function Np(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=c=>En(wo+(Ys-wo)*c/n),r=c=>En(Ln-(Ln-ji)*c/o),l=e.map(({depth_mm:c,volume_ml:p})=>`L${i(c)} ${r(p)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${jp} ${Qs}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${Wp(n).map(c=>F`<path class="grid" d="M${i(c)} ${ji}V${Ln}" />
            <text x=${i(c)} y=${Ln+20} text-anchor="middle">${En(c)}</text>`)}
      ${Wp(o).map(c=>F`<path class="grid" d="M${wo} ${r(c)}H${Ys}" />
            <text x=${wo-8} y=${r(c)} text-anchor="end" dominant-baseline="middle">${En(c)}</text>`)}
      ${F`<text x=${(wo+Ys)/2} y=${Qs-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(ji+Ln)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${ji}V${Ln}" />`}
    </svg>
    ${S_(e)}`}function S_(e){let t=Math.max(1,Math.round(e.length/T_)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
  </details>`}var Ni=Math.PI/8,R_=500,Zs=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#a="";#l="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#a="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#d()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#p()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#d()},R_))}#p(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#d(){let t=this.#p();if(t!==this.#a){try{let n=await rt(JSON.parse(t));if(t!==this.#p()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(an(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof w))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Drawing ...",this.#u(),this.#d()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#l}</p>`;Be(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
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
            />`:u}`}};customElements.define("solid-panel",Zs);function Up(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${x({key:"mould.brimful",label:"To the brim",note:`${P(ie(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ne(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Np(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${P_(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function P_(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var Cn=e=>b(a.printing,e);function Hp(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function zp(e){if(!a.printing.is_working){Cn({is_working:!0,told:"Making it ..."});try{await A_(),Cn({told:await e()})}catch(t){Cn({told:t instanceof Error?t.message:String(t)})}Cn({is_working:!1})}}async function A_(){await cn();let e=Xe("run");if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var vt=(e,t)=>()=>zp(async()=>{let n=URL.createObjectURL(await rt(t));return Hp(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),D_=e=>()=>zp(async()=>(Hp(await rl(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),M_=e=>{Cn({paper:e}),localStorage.setItem("paper",e)},O_=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function Jp(e){let{batch:t}=a.printing;return X(e)&&t<=e.pieces.batches?t:0}function F_(e){if(!X(e))return u;let t=Jp(e),n=i=>Cn({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${J(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${O_(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Fe(e,r)}`))}
      </select>
    </div>
  </div>`}function qp(e){let{paper:t,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),r={file:a.run.file,run:a.run.now},l=a.measured?.mould,c={file:l,"below-brim":`${e.pour.below_brim_mm} mm`},p=Jp(e),m={plan:r,paper:t,...p?{batch:String(p)}:{}},h=($,k,D="")=>s`<button type="button" class=${D} ?disabled=${n} @click=${()=>{k()}}>${$}</button>`;return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${se("Paper",t,[["A4","A4"],["Letter","Letter"]],M_)}
    ${F_(e)}
    <div class="choice">
      ${h("Bench sheet, to print",D_({kind:"sheet",...m}),"strong")}
      ${a.files?.makes_pdf?h("Bench sheet, PDF",vt(`${i}${p?` batch ${p}`:""}.pdf`,{kind:"sheet-pdf",...m})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?h("Label draft",vt(`${i} label.txt`,{kind:"label",plan:r})):""}
      ${h("Drawing of the pour, true size",vt(`${i} pour.svg`,{kind:"picture",plan:r}))}
      ${h("Drawing of the piece",vt(`${i}.svg`,{kind:"piece",plan:r}))}
      ${h("Whole piece, GLB",vt(`${i}.glb`,{kind:"glb",plan:r}))}
      ${h("Whole piece, STL",vt(`${i}.stl`,{kind:"stl",plan:r}))}
      ${l?s`${h("Filled cavity, GLB",vt(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${h("Cavity, STL",vt(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${P(ie(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Vp=e=>qp(e);var Pe={at:"/decorations"},Ui=e=>`${Pe.at}/${e}`,Gt=e=>j("run",`${Ui(e)}/name`).trim()||`Decoration ${e+1}`,me=()=>_(a.run.now,"/cut")!==void 0,Hi=e=>["mould","rod","drizzle"].find(t=>g("run",`${e}/${t}`)!==void 0),yo=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var ve="/batch",In="/pots",vo=e=>`${e}/moulds_owned`;function Xs(){let e=[ve,In,vo("/pour")];return R({name:"batches",pointers:e,summary:`Batches, pots, moulds owned${L_()}`,body:()=>s` <p class="hint">What you leave blank sets no limit.</p>
        ${E("run",ve)} ${E("run",In)}
        <div class="row">
          ${d({label:"Moulds like this owned",at:vo("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${d({label:"Pot for the base holds",at:`${In}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${d({label:"Lye jug holds",at:`${In}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${E_()} ${I_()}
        </div>
        ${y({question:"Cavities at each filling",at:ve,asked_at:`${ve}/fill`,chosen:g("run",`${ve}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Kp("fill",t==="full"?t:void 0)})}`})}function L_(){let[e,t,n,o,i]=[`${ve}/pieces`,`${ve}/casts`,`${In}/holds`,`${In}/lye_jug`,vo("/pour")].map(l=>j("run",l)),r=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&te(Number(i),"mould")].filter(Boolean);return r.length?`: ${r.join(", ")}`:""}function Kp(e,t){let n=H("run",ve,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function E_(){let e=g("run",`${ve}/casts`)!==void 0,t=(n,o)=>d({label:o,at:`${ve}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return me()?g("run",`${ve}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${C_}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function C_(){K("run","Counted in loaves",ve,Kp("pieces",void 0))}function I_(){let e=`${ve}/whippings`;return!Ce()&&g("run",e)===void 0?u:d({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var B_=500,ea=()=>_(a.run.now,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=B_;function W_(){K("run","Cut it into bars","/cut",{bar:{},kerf:""},qt(V("run","/cut/bar")))}function j_(){K("run","Left whole","/cut",void 0,Re("cut-into-bars"))}function ta(){return ea()?s`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${W_}>Cut it into bars</button>
  </div>`:u}var N_={loaf:{thickness:""},slab:{length:"",width:""}};function U_(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var H_={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function zi(){let e=U_(),t=(o,i)=>d({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=j("run","/cut/along");return s` ${y({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>N_[o]})}
    <div class="row">
      ${e==="loaf"?d({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>d({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${d({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?y({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:H_[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${j_}>Leave it whole</button>`}function xt(e){let{whole:t,batch:n}=e,o=Eu(t,n);return s`<h3 class="batch-head of-plan ${gn(t)?"of-sizes":""}">
      One batch: ${Fe(t,n)}${o?s`<span>, ${o}</span>`:u}
    </h3>
    ${gn(t)?s`<div class="sizes">
            ${se("Which batch is weighed",String(Gr(t)),t.batches.map((i,r)=>[String(r),Fe(t,i)+(i.count>1?`, ${so(i.count)}`:"")]),z_)}
          </div>`:u}`}function z_(e){let t=a.plan;f({batch:Number(e)}),oe(`One batch: ${Fe(t,t.batches[a.batch])}`)}function Gp(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(p=>`${gn(e)?`${p.count} of `:""}${Fe(e,p)}`),l=`Made in ${t} batches${gn(e)?": ":" of "}${_n(r)}; ${oi(n,o)}.`,c=e.batch_limits.filter(p=>p.sets);return s`<div class="batches-told of-plan">
    ${X(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${te(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?s`<p><span class="called">What sets a batch:</span> ${c.map(p=>p.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(p=>p.text).join(" ")}</p>`:u}
  </div>`}var Qp=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Zp(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(p=>!p.buried&&p.cavity_fills>0),r=i?td(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,c=e.pipe?J_(e,t,n,l):0;return{brim:n,line:o,topping:c,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+c+l)}}function J_(e,t,n,o){let i=$n(_(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,c]=Tr(t,t.brim-.01),p=Math.PI/4*(c-l)**2;return 1500*e.pipe.visible_each_ml/p}function Yp(e,t){let[n,o]=Tr(e,e.brim-.01),i=(n+o)/2,r=3,l=h=>(o-n)/2*Math.sqrt(1-(h/(r+.3))**2),c=h=>-(t.brim+t.topping*h/r),p=(h,$,k)=>{let D=i+k*(Math.max(l(h),l($))+(o-n)*.035);return`C${D} ${c(h)} ${D} ${c($)} ${i+k*l($)*($?.94:1)} ${c($)}`},m=`M${n} ${c(0)}`;for(let h=0;h<r;++h)m+=p(h,h+1,-1);m+=`L${i+l(r)*.94} ${c(r)}`;for(let h=r;h>0;--h)m+=p(h,h-1,1);return`${m}Z`}var xo=(e,t)=>e===t?`shaded ${t}`:"plain";function Yt(e,t,n=u){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Zp(t,o),r=o.right-o.left,l=Math.max(6,r*.1),c={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
      <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${e$(e,t)}>
        ${q_(e)} ${V_(e,t,o,i)} ${G_(e,t,o,i)} ${Y_()}
        ${Q_(e,t,o,i)} ${X_(e,t,o,i)}
        ${F`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${e==="decorate"&&na(t)?s`<p class="hint">${na(t)}</p>`:u}`}function Xp(e,t){let n=a.measured.outline,o=Zp(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function q_(e){return F`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${Qp(ed())} /></clipPath>
  </defs>`}function ed(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function V_(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(c=>K_(c,n)):[[o.line,o.line]]).map(([c,p])=>`M${n.left} 0V${-c}L${n.right} ${-p}V0Z`);return F`<g clip-path="url(#cavity-${e})">${l.map((c,p)=>F`<path class="whole" d=${c} /><path class="${xo(i,"pour")} band${p%3}" d=${c} />${i==="pour"&&p%2===0?F`<path fill="url(#hatch-${e})" d=${c} />`:u}`).reverse()}</g>`}function K_(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function G_(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(_(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return F`<g clip-path="url(#cavity-${e})"><rect class=${xo(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Y_(){return F`<path class="wall" fill-rule="evenodd" d=${Qp(ed())} />`}function Q_(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((c,p)=>(c.buried?.embeds??[]).map(m=>({embed:m,one:c,i:p})))??[];return F`
    ${t.pipe?F`<path class=${xo(e,"pipe")} d=${Yp(n,o)} />${e==="pipe"?F`<path fill="url(#dots-pipe)" d=${Yp(n,o)} />`:u}`:u}
    ${o.ball?F`<circle class=${xo(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:c,one:p,i:m})=>Z_(xo(e,"decorate"),i,c,p,m))}`}function Z_(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],c=$n(_(a.run.now,`/decorations/${i}/rod/diameter`)),p=$n(_(a.run.now,`/decorations/${i}/rod/length`));if(!c||!p)return F`<circle class=${e} cx=${r} cy=${-l} r=${td(o)} />`;let[m,h]=[n.turn[0][0],n.turn[2][0]],$=Math.min(1,Math.hypot(m,h)),k=c/2*Math.sqrt(1-$*$),D=p*$+2*k,O=-180/Math.PI*Math.atan2(h,m);return F`<rect class=${e} x=${-D/2} y=${-c/2} width=${D} height=${c} rx=${k} ry=${k?c/2:0}
    transform="translate(${r} ${-l}) rotate(${O})" />`}var td=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function na(e){let t=(e.decorations??[]).filter((n,o)=>_(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function X_(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return F`${Array.from({length:i-1},(r,l)=>{let c=n.left+(n.right-n.left)*(l+1)/i;return F`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function e$(e,t){let n=P(ie(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${na(t)}`.trim()}var t$={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Ie={at:"/dust"},oa=e=>j("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function nd(){I(Ie,{name:""},"Dust")}function n$(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function od(e){let t=`/dust/${e}`,n=n$(t),o=oa(e),i=r=>({...H("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...t$[r]});return s` ${d({label:"Which powder",at:`${t}/name`})}
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
  ${$t("run",t,o)}`}var o$={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function i$(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function id(e,t){let n=i$(e),o=i=>({...H("run",e,["on_top","buried"]),...o$[i]});return Hi(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:R({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${y({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?r$(`${e}/on_top`):n==="buried"?a$(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function r$(e){return s`<div class="row">
      ${d({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${d({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${rd(e,"It is turned")}`}function rd(e,t){let n=o=>d({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return R({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var s$=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function a$(e,t){let n=`${e}/buried`,o=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),i=g("run",`${n}/placed`);return s`${E("run",n)}
  ${d({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${y({question:"When is it set in?",at:`${n}/placed`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:r=>r})}
  ${y({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:o,answers:s$,puts:r=>l$(e,r)})}
  ${o==="said"?c$(e,t):u}`}var sd={x:"",y:"",height:""};function l$(e,t){let n=H("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${yo(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>sd);return{...H("run",e,["per_piece","per_cast"]),[ad(e)]:i.length,buried:{...n,places:i}}}var ad=e=>me()?"per_cast":yo(e)??"per_piece";function u$(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>W(r,`${e}/${l}`,void 0),n);return W(i,`${e}/${ad(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function c$(e,t){let n=u$(e),o=T(n);return s`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,c=p=>d({label:`Place ${r+1}: ${p}`,at:`${l}/${p}`,unit:"mm",short:!0});return s`<div class="part" id=${L(n,r)} role="group" aria-label="Place ${r+1} of ${Gt(t)}">
        ${E("run",l)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${N(n,r,`place ${r+1} of ${Gt(t)}`)}
        </div>
        ${rd(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${B(n,"Add a place",()=>I(n,sd,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var ld=e=>`${e} made`;function p$(){let e=Ui(T(Pe).length),t=me()?{}:{per_piece:""};for(let n of[ld(e),`${e} where`])Xu("run",n);I(Pe,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Ji(){let[e,t]=[T(Pe).length>0,T(Ie).length>0];return s`<div class="choice">
    ${B(Pe,e?"Add another decoration":"Add a decoration",p$)}
    ${B(Ie,t?"Add another dust":"Add a dust",nd)}
  </div>`}function ud(e){let t=Ui(e);return s` ${E("run",t)} ${h$(t)}
    <div class="row">
      ${d$(t)} ${d({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${d({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${d({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
      ${d({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${id(t,e)} ${$t("run",t,Gt(e))}`}function d$(e){let t=yo(e),n=dt("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(me()&&t==="per_piece"))return s``;let o=t==="per_cast"?me()?"In each loaf":"In each cast":me()?"On each bar":"On each piece",i=r=>({...H("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${me()?y({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?d({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var m$={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function f$(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...H("run",e,n),...m$[t]}}function h$(e){let t=Hi(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${e}/${o}`);return R({name:ld(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${d({label:"What it is called",at:`${e}/name`})}
          ${d({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${y({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>f$(e,o)})}
        ${t?g$[t](e):u}
        ${d({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var g$={mould:_$,rod:e=>s`<div class="row">
      ${d({label:"Rod, across",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${d({label:"Rod, long",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${d({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${d({label:"Thick",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function _$(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${Tn("Cast in",`${e}/mould`,a.files?.moulds)}
  ${d({label:"Trays like this owned",at:vo(e),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${y({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?d({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):d({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${y({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var ko=()=>T(Pe).length+T(Ie).length>0;function cd(){return s`<section class="lane unused" aria-label="Decorate">
    <h2>Decorate</h2>
    <p>Nothing is set on or in it${ea()?", and it is left whole":""}.</p>
    ${Ji()} ${ta()}
  </section>`}function pd(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function dd(e){let t=T(Pe).flatMap((n,o)=>{let i=$$(e,o);return i?[{one:i,i:o}]:[]});return s`<div class="side">${t.map(({one:n})=>b$(e,n))} ${Yt("decorate",e)}</div>
    <div class="weights">
      ${t.map(({one:n,i:o})=>w$(e,n,o))}
      ${e.dust?.length&&T(Ie).length?s`${X(e.whole)?xt(e):u}
              <h3>Weigh for dusting</h3>`:u}
      ${T(Ie).map((n,o)=>v$(e,o))}
    </div>
    ${ia()}`}var $$=(e,t)=>pd(e.decorations,T(Pe),j("run",`/decorations/${t}/name`),t);function ia(){let e=(t,n,o,i)=>s`<section class="questions" id=${L(t,n)} aria-labelledby="${L(t,n)}-title">
      <div class="part-head">
        <h3 id="${L(t,n)}-title">${o}</h3>
        ${N(t,n,o)}
      </div>
      ${i}
    </section>`;return s`<div class="all-questions">
    ${T(Pe).map((t,n)=>e(Pe,n,Gt(n),ud(n)))}
    ${T(Ie).map((t,n)=>e(Ie,n,oa(n),od(n)))} ${Ji()} ${ta()}
  </div>`}function b$(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"";return s`<p class="order ${a.is_old?"old":""}">
    Cast <b>${t.casts}</b> of ${t.name} ahead${n}${X(e.whole)?", for the whole run":""}.
  </p>`}function w$(e,t,n){return s`<h3>
      Weigh for ${t.name} ${X(e.whole)?s`<small>for the whole run</small>`:u}
    </h3>
    ${x({key:`decorations.${n}.make`,label:`Melt of ${t.material}`,shown:z(a.units,pe(t,"make_")),size:"weigh",of:`decorations.${n}.make_g`})}
    ${x({key:`decorations.${n}.each`,label:"Each weighs",note:`${v(t.volume_each_ml,2)} ml`,shown:M(a.units,t.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${ht(t.casting_s)} of casting.</p>`:u} ${y$(t,n)}`}function y$(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":P(ie(a.units,l)),r=l=>{let c=(o?.embeds??[]).map(l).filter(p=>p!==null);return c.length?P(ie(a.units,Math.min(...c))):"none near"};return s`<h4>Fit of ${e.name}</h4>
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
    ${Vt(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function v$(e,t){let n=pd(e.dust,T(Ie),j("run",`/dust/${t}/name`),t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=x({key:`dust.${t}`,label:n.name,shown:z(a.units,pe(n,"")),size:"weigh",of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:u}`}function md(e){let{cut:t}=e;return s`<div class="side">
      ${t?s`<p class="order ${a.is_old?"old":""}">
              Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}.
            </p>`:u}
      ${Yt("cut",e)}
    </div>
    <div class="weights">
      ${t?s`${x({key:"cut.bar",label:"A bar on average, fresh",note:x$(t),shown:M(a.units,e.piece.fresh_g),size:"weigh",of:"cut.bars_each"})}
            ${x({key:"cut.offcuts",label:"Offcuts",shown:M(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
            ${k$(t)}`:u}
    </div>
    <div class="all-questions">${zi()} ${ko()?u:Ji()}</div>`}function x$(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${v(n,1)} to ${v(o,1)} g`}function k$(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>At ${t.size_text} ${t.direction} it gives ${t.bars} bars.</li>`)}
  </ul>`:u}var Tt="/pour/layers",kt={at:Tt,in_order:!0},ra=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Vi=()=>T(kt);function T$(){let e=t=>Vi().some(n=>t in n);return ra.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function sa(e){let t=Vi(),n=T$();return t.length?s`<h3>
      Layers, lowest first ${e&&_e(e)?s`<small>${_e(e)}</small>`:u}
    </h3>
    ${y({question:"All of them by",at:Tt,is_told_elsewhere:!0,chosen:n,answers:ra,puts:o=>R$(o,e)})}
    <div class="items">${t.map((o,i)=>P$(o,i,n,e))}</div>
    ${B(kt,"One more layer on top",()=>I(kt,{name:S$(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${B(kt,"Pour it in layers",()=>I(kt,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function S$(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function fd(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function R$(e,t){let n=Vi(),o=a.is_old?void 0:t,i=(r,l)=>{let c=fd(o,r,l);return e==="parts"||!c||e==="depth"&&"tilted"in r?"":e==="depth"?`${v(c.to_mm-c.from_mm,3)} mm`:`${v(c.mass_each_g,3)} g`};return n.map((r,l)=>{let c=qi(l),p=e!=="parts"&&n.length>1&&l===n.length-1;return{...c,...p?{rest:!0}:{[e]:i(r,l)}}})}var qi=e=>H("run",`${Tt}/${e}`,[...ra.map(([t])=>t),"rest"]);function P$(e,t,n,o){let i=`${Tt}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=fd(o,e,t);return s`<div class="part" id=${L(kt,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?A$(o,l,t):s`<p class="part-title">${r}</p>`} ${E("run",i)}
    ${M$(e,t,n,r)}
    ${o&&l?l.colours.map((c,p)=>D$(o,c,t,p)):u}
    ${R({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, prop",body:()=>s` ${d({label:"Name of the layer",at:`${i}/name`})} ${E$(i,r)} ${I$(i,t)}
        ${N(kt,t,r)}`})}
  </div>`}function A$(e,t,n){return x({key:`pour.layer.${n}`,label:t.name,note:`${Zr(ie(a.units,t.to_mm-t.from_mm))} thick, ${Zr(M(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?M(a.units,t.g):z(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function D$(e,t,n,o){return x({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${v(t.teaspoons,1)} tsp`:"",shown:tt(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function M$(e,t,n,o){if(n==="parts")return O$(e,t,o);let i="rest"in e;return s`${i?u:d({label:`${o}, ${n}`,at:`${Tt}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?L$(t,n):F$(t,n)}
    >
      takes the rest
    </button>`}function O$(e,t,n){let o=`${Tt}/${t}/parts`,i=r=>()=>{f({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${d({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function F$(e,t){let n=Vi().map((o,i)=>i===e?{...qi(i),rest:!0}:o.rest?{...qi(i),[t]:""}:o);K("run","takes the rest",Tt,n)}function L$(e,t){let n=`${Tt}/${e}`;K("run","amount of the layer",n,{...qi(e),[t]:""},_t("run",`${n}/${t}`))}function E$(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${T(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${L(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${N(n,i,l)}
      </div>
      ${E("run",r)}
      <div class="row">
        ${d({label:"Colour",at:`${r}/name`})}
        ${d({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${d({label:"Weight of a loose ml",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${$t("run",r,l)}
    </div>`})}
  ${B(n,"Add a colour",()=>I(n,{name:"",rate:""},"colour"))}`}var C$=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function I$(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===T(kt).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:be({at:n,name:"the prop",title:"The mould is tilted",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>s`${d({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${y({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:C$,puts:r=>r})}
        ${d({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var ot=()=>_(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function aa(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=ot()==="depth"?n-o:o;f({typed:void 0}),Z("run",`/pour/line/${ot()}`,`${v(i,2)} mm`)}function hd(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=$n(_(a.run.now,`/pour/line/${ot()}`));return n===void 0?e.pour.below_brim_mm:ot()==="depth"?t-n:n}function B$(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function W$(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=hd(e),{share:o,h:i}=Xp(e,t-n),r=p=>B$(p,m=>aa(e,n+m*i)),l=p=>{let m={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[p.key];m!==void 0&&(p.preventDefault(),aa(e,n+m))},c=p=>p&&(p.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${v(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${P(ie(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function j$(e){let{pour:t}=e,n=P(ie(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each";return s`<p class="order ${a.is_old?"old":""}">
    ${o}, <b>${P(M(a.units,t.mass_each_g))}</b> ${i}.
  </p>`}function gd(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>aa(e,hd(e)+i);return s`<div class="side">
      ${j$(e)} ${Yt("pour",e,W$(e))} ${$d(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${d({label:ot()==="depth"?"Deep":"Below brim",at:`/pour/line/${ot()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${x({key:"pour.mm",label:"1 mm is",shown:ne(a.units,t.ml_per_mm,2),note:`${qe(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${x({key:"pour.each",label:"Weigh into each",shown:M(a.units,t.mass_each_g),size:"weigh",note:`${v(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
    </div>
    <div class="weights">
      ${xt(e)} ${la("pour","Weigh for the base",t.formula)} ${ua(t,n,"pour")}
      ${x({key:"pour.make",label:"Base to make",shown:M(a.units,t.make_g),size:"weigh",of:`${n}.make_g`})}
      ${x({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>
    <div class="more">${sa(e)} ${po("pour")}</div>`}function _d(){let e=ot();return s`<div class="side">
      ${$d()} ${E("run","/pour/line")}
      ${d({label:e==="depth"?"Deep":"Below brim",at:`/pour/line/${e}`,unit:"mm"})}
    </div>
    <div class="more">${sa()} ${po("pour")}</div>`}function $d(e){let t=n=>{if(n===ot())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;K("run","pour line","/pour/line",{[n]:o===void 0?"":`${v(o,3)} mm`})};return se("The pour line is measured",ot(),[["below_brim","From the brim"],["depth","From the floor"]],t)}function N$(e){return e.teaspoons?`about ${v(e.teaspoons,1)} tsp`:""}function U$(e){let t=e.set_aside_for_colours_g?`${P(z(a.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[N$(e),t].filter(Boolean).join(", ")}function la(e,t,n){return s`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>ft(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function ua(e,t,n){return s`${li(e).map(({one:o,i})=>ca(o,i,t,n))}`}function ca(e,t,n,o){return x({key:`${o}.${t}`,label:e.name,note:U$(e),shown:tt(a.units,e),size:"weigh",of:`${n}.ingredients.${t}.g`})}var H$=[0,50,80,100];function bd(e){let{pipe:t}=e;return t?s`<div class="side">
      <p class="order ${a.is_old?"old":""}">
        Pipe <b>${v(t.volume_each_ml,0)} ml</b> on each, ${P(M(a.units,t.mass_each_g))} at this
        whip.
      </p>
      ${Yt("pipe",e)}
      ${x({key:"pipe.each",label:"Topping on each",shown:ne(a.units,t.volume_each_ml),note:`${v(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${J$(e)} ${vd()} ${Y$(e)}
    </div>
    <div class="weights">
      ${xt(e)} ${la("pipe","Weigh for the topping",t.formula)}
      ${e.whippings.map((n,o)=>z$(e,n,o))}
      ${x({key:"pipe.density",label:"Whipped density",note:`overrun ${v(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`})}
      ${$s(t)}
    </div>
    <div class="more">${_s(t)} ${gs()}</div>`:da()}var To=e=>e===0?"pipe":`pipe.whipping${e}`,Qt=(e,t)=>`${e.place}.pipe.whippings.${t}`;function pa(e,t){let n=ao(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function z$(e,t,n){let o=To(n);return s`${pa(e,t)} ${ua(t,Qt(e,n),o)}
  ${x({key:`${o}.make`,label:"Topping to make",note:ao(e,t),shown:M(a.units,t.make_g),size:"weigh",of:`${Qt(e,n)}.make_g`})}`}function da(){return s`<div class="more">${_s()}</div>
    <div class="side">${vd()} ${g("run","/pipe/whip_now")===void 0?u:yd()}</div>
    <div class="weights">${$s()} ${Oc()}</div>
    <div class="more">${gs()}</div>`}var wd=e=>_e(e)?s`<small>${_e(e)}</small>`:u;function J$(e){return s`<h3>This bowl, now ${wd(e)}</h3>
    ${yd()} ${e.whippings.map((t,n)=>q$(e,t,n))}`}function q$(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whip.`:`Enough for the ${t.pieces} to make.`;return s`${pa(e,t)}
  ${o==null?u:x({key:`${To(n)}.now`,label:"This bowl pipes now",note:r,shown:[te(o,"piece"),""],size:"weigh",of:`${Qt(e,n)}.pieces_now`})}
  ${K$(e,t,n)}`}function yd(){let e={holds:g("run","/pipe/whip/holds")??"",net:""};return be({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:V$})}function V$(){return s`<div class="row">
    ${d({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${d({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function K$(e,t,n){return t.readings?.length?s`<table class="readings">
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
    ${Vt(`${To(n)}.readings`,"Show the calculation",`${Qt(e,n)}.readings`)}`:u}function vd(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(j("run",e))?.[1]?.replace(",",".")),n=Ve("run",e);return s`<h3 id="recess">How much of the headspace below the brim does the topping fill?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${H$.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${G$(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${d({label:"Or as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function G$(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${F`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function Y$(e){let t=e.whippings.map(i=>({one:i,words:Q$(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${wd(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${pa(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Vt("pipe.limits","How the limits come about",`${Qt(e,0)}.limits`)}`}function Q$({piping_s:e,lye_spoonfuls:t}){return[e?`${ht(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${ht(t.altogether_s)}`:""].filter(Boolean).join("; ")}function kd(e){if(!Iu(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=X(t)?`${te(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${xd(e,"pour","The base, whole run")}
      ${t.pipe?xd(e,"pipe","The topping, whole run"):u} ${Z$(e)}
    </div>
  </section>`}function xd(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...li(i),...yn(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:c})=>Ki(`${t}.ingredients.${c}.g`,l.name,tt(a.units,l)))}
    ${Ki(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",M(a.units,i.make_g))}
  </div>`}var Ki=(e,t,n)=>x({key:`needs.${e}`,label:t,shown:n,of:e});function Z$(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((c,p)=>({layer:r,one:c,i:l,j:p}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>z(a.units,pe(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:c,j:p})=>Ki(`pour.layers.${c}.colours.${p}.g`,`${l.name}, for ${r.name}`,tt(a.units,l)))}
    ${o.map((r,l)=>Ki(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function Gi(e){return s`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye</h2>
    ${xt(e)}
    <div class="jugs">
      ${Td({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=ao(e,t);return Td({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,place:Qt(e,n),pieces:e.batch.pieces,key:To(n)})})}
    </div>
    ${eb(e)} ${Vs()} ${Ks(e)}
  </section>`}function Td({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,c=Ut(e,i).length>0,p=`danger-${r.replaceAll(".","-")}`,m=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${yn(n).map(({one:h,i:$})=>ca(h,$,o,r))}
    ${x({key:`${r}.strength`,label:"Lye strength",note:`water ${v(n.water_to_pure_alkali,2)} : 1 to alkali; water ${v(n.water_percent_of_fats,1)} % of the fats`,shown:[`${v(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${x({key:`${r}.superfat`,label:"Superfat as weighed",shown:[`${et(l)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${io(e,p,i)} ${Sd(n.superfat_percent)} ${X$(n,o,r)}
    ${!m||g(e,"/superfat")===void 0?u:d({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:c?p:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Sd(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${et(t)} and ${et(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${et(o)} and ${et(i)}.`,p=r[0],m=p?s` Most of the doubt is ${p.cause}: ${p.remedy}.`:u;return Qr(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${c}
    ${p?m:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${c} Some fat is left over even at the lowest.${m}</p>`}function X$(e,t,n){return e.heat?s`${Rd(e.heat)} ${Vt(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function Rd(e){let t=o=>P(zu(a.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?ht(o.shortest_min*60):"at once"} to ${ht(o.longest_min*60)} in ${o.in}`);return s`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function eb(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,c,p="")=>x({key:`pot.${i}`,label:r,note:p,shown:l,size:"weigh",of:`${e.place}.lye_pot.${c}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${v(t.strength_percent,1)} %${_e(e)&&`; ${_e(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",z(n,pe(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,z(n,pe(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",z(n,pe(t,"lye_")),"lye_g",tb(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,z(n,pe(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${et(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,z(n,pe(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${io(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Sd(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${P(z(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Rd(t.heat):u}
  </div>`}function tb(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=pe(e,"lye_"),i=z(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${P(i)} with the pot: make up with water to that after cooling`}function Pd(e){let t=_e(e);return s`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${t?`Of ${t}: in`:"In"} the pieces ${P(M(a.units,e.pour.in_pieces_g))} of base, lost
      ${P(M(a.units,e.pour.lost_g))}${e.pipe?`; of topping ${P(M(a.units,e.pipe.in_pieces_g))}, lost ${P(M(a.units,e.pipe.lost_g))}`:""}.
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
  </section>`}function Ad(e){let t=hn(e);return s`${ma(e)} ${fa(t)} ${Gi(t)} ${kd(t)} ${Pd(t)}`}function Dd(){let e=Ce();return s`${Md()} ${Xs()}
    <div class="lanes">
      ${St("pour","Pour",_d())} ${e?St("pipe","Pipe",da()):u}
      ${ko()?St("decorate","Decorate",ia()):u}
      ${me()?St("cut","Cut",zi()):u}
    </div>
    ${Ip()}`}function Md(e=u){return s`<div class="row">
    ${d({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${d({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    ${Tn("Mould","/pour/mould",a.files?.moulds)}
    ${Tn("Base","/pour/formula",a.files?.formulas)}
    ${Ce()?Tn("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function ma(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,c=X(e)?`${l} batches, ${te(o,"filling")}`:oi(o,i),p=x({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${c}`:c,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"});return s`<section class="order-of" aria-labelledby="run-title">
    <div>
      ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
      ${e.from_studio?s`<p class="aside">From the studio: ${e.from_studio.text}.</p>`:u}
    </div>
    ${Md(p)}
    <div class="batches">${Gp(e)} ${Xs()}</div>
    <p class="aside">Tap a figure marked = to see how it is calculated.</p>
  </section>`}function fa(e){let t=Ce();return s`<div class="lanes">
    ${St("pour","Pour",gd(e))} ${t?St("pipe","Pipe",bd(e)):u}
    ${ko()?St("decorate","Decorate",dd(e)):u}
    ${me()?St("cut","Cut",md(e)):u}
    ${t?u:nb("Pipe","This run has no topping.","Add a topping",Dc,Mc())}
    ${ko()||me()?u:cd()}
  </div>`}function St(e,t,n){let o=a.folded.has(e);return s`<section class="lane ${e}" aria-labelledby="lane-${e}">
    <div class="lane-head">
      <h2 id="lane-${e}" tabindex="-1">${t}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${t}"
        @click=${()=>rn("folded",e)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?u:s`<div class="lane-body">${n}</div>`}
  </section>`}function nb(e,t,n,o,i=u){return s`<section class="lane unused" aria-label=${e}>
    <h2>${e}</h2>
    <p>${t}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}var ob={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Od(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${ob[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function Fd(e){let t=hn(e);return s`${ma(e)} ${fa(t)} ${Gi(t)}`}var ib={weigh:Fd,"set-up":Ad,watch:Od,money:Bp,mould:Up,print:Vp};function Ld(e){let{plan:t}=a;return s`${Qo().map(n=>vn(n))} ${Yo().map(xn)} ${Ii()}
    <h1 id="run-title" tabindex="-1">${t?.run??String(a.run.now.name??"")}</h1>
    ${t?ib[e](t):rb(e)}`}function rb(e){return a.complaint?s`<p class="hint">Correct this to see the figures.</p>
    ${e==="set-up"?Dd():""}`:s`<p class="hint">Reading the run ...</p>`}var sb=()=>{f({new_run:{name:"",mould:"",formula:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Cd(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${sb}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=t.trim()&&n&&o,r=()=>{de(async()=>{await Zc({name:t.trim(),mould:n,formula:o}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
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
      ${Ed(e,"mould","Mould",ab())} ${Ed(e,"formula","Base",lb())}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!i} @click=${r}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${i?u:s`<p class="hint">A run needs a name, a mould and a base.</p>`}
  </section>`}var ab=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],lb=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function Ed(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i}>${n}</label>
    <select id=${i} @change=${l=>b(e,{[t]:l.target.value})}>
      <option value="" .selected=${J(e[t]==="")}>choose ...</option>
      ${o.map(([l,c])=>s`<option value=${l} .selected=${J(l===e[t])}>${c}</option>`)}
    </select>
  </div>`}var ub=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function Bd(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(ub),n=e.filter(o=>o.shipped);return s`${On("Runs")} ${Cd()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?s`<ul class="cards">
              ${t.map(Id)}
            </ul>`:s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
      <h2>Examples</h2>
      <ul class="cards">
        ${n.map(Id)}
      </ul>
    </section>`}function Id(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":te(t,"piece"),n??"",o?`due ${wn(o)}`:"",i?`made ${wn(i)}`:r?`changed ${wn(r)}`:""].filter(Boolean);return Fn({kind:Et,one:e,facts:l,open:()=>mt(e.file)})}var Wd=document.getElementById("page");function jd(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Ep()} ${Ru()}
    <main id="main" tabindex="-1" data-view=${e} class=${a.is_old&&!Se(e)?"old-now":""}>
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${pb()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var cb={runs:Bd,formulas:Rp,moulds:Ap};function pb(){let{view:e,fault:t}=a;return Je(e)?Ld(e):Se(e)?cb[e]():e==="formula"?hp():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Ba(()=>{ip(),Be(jd(),Wd),Nd()});addEventListener("resize",Nd);Be(jd(),Wd);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||Se(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=Wi();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return wu();U(a.run)&&Me()});function db(){if(!a.run.file)return ha();f({fault:void 0}),U(a.run)&&Me(),Q()}function ha(){f({fault:void 0}),dp().catch(e=>{f({fault:mb(e)}),e instanceof w&&e.may_pass&&window.setTimeout(ha,2e3)})}function mb(e){return e instanceof w&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}function Nd(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}su();pp();Ha(e=>{Dn(),e&&db()});ha();
